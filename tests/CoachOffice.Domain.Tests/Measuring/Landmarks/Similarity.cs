using MathNet.Numerics.LinearAlgebra;

namespace CoachOffice.Domain.Tests.Measuring.Landmarks;

/// <summary>
/// An oracle: the rotation, scale and shift that carry one set of points to another with the smallest squared error, without a reflection.
/// Umeyama S (1991) Least-squares estimation of transformation parameters between two point patterns, IEEE PAMI 13(4):376-380, equations 38 to 43.
/// </summary>
internal sealed record Similarity(Matrix<double> Rotation, double Scale, Vector<double> Shift, double MeanSquaredError)
{
    public static Similarity Between((double X, double Y)[] from, (double X, double Y)[] to)
    {
        var (x, y) = (Columns(from), Columns(to));
        var (meanX, meanY) = (x.RowSums() / from.Length, y.RowSums() / to.Length);
        var (dx, dy) = (Centred(x, meanX), Centred(y, meanY));
        var svd = (dy * dx.Transpose() / from.Length).Svd();
        var guard = Matrix<double>.Build.DenseIdentity(2);
        if (svd.U.Determinant() * svd.VT.Determinant() < 0) guard[1, 1] = -1;
        var rotation = svd.U * guard * svd.VT;
        var spread = dx.FrobeniusNorm() * dx.FrobeniusNorm() / from.Length;
        var scale = ((svd.W * guard).Trace()) / spread;
        var shift = meanY - (scale * rotation * meanX);
        var left = y - (scale * rotation * x) - Repeated(shift, from.Length);
        return new Similarity(rotation, scale, shift, left.FrobeniusNorm() * left.FrobeniusNorm() / from.Length);
    }

    public (double X, double Y) Carry((double X, double Y) point)
    {
        var carried = (Scale * Rotation * Vector<double>.Build.Dense([point.X, point.Y])) + Shift;
        return (carried[0], carried[1]);
    }

    private static Matrix<double> Columns((double X, double Y)[] points) => Matrix<double>.Build.Dense(2, points.Length, (row, column) => row == 0 ? points[column].X : points[column].Y);

    private static Matrix<double> Centred(Matrix<double> points, Vector<double> mean) => points - Repeated(mean, points.ColumnCount);

    private static Matrix<double> Repeated(Vector<double> one, int times) => Matrix<double>.Build.DenseOfColumnVectors(Enumerable.Repeat(one, times));
}
