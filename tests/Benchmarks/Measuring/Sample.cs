using System.Globalization;

namespace CoachOffice.Benchmarks.Measuring;

/// <summary>Numbers of one kind, one a round.</summary>
internal sealed class Sample(IEnumerable<double> values)
{
    private readonly double[] _sorted = [.. values.Order()];

    public double Median => At(0.5);

    public double Least => _sorted[0];

    public double Most => _sorted[^1];

    /// <summary>The value below which this share lies, by nearest rank.</summary>
    public double At(double share) => _sorted[(int)Math.Min(_sorted.Length - 1, Math.Floor(share * _sorted.Length))];

    /// <summary>Median with least and most, e.g. <c>4.7 (4.2 to 5.1)</c>.</summary>
    public string Text(string format) =>
        string.Create(CultureInfo.InvariantCulture, $"{Median.ToString(format, CultureInfo.InvariantCulture)} ({Least.ToString(format, CultureInfo.InvariantCulture)} to {Most.ToString(format, CultureInfo.InvariantCulture)})");

    /// <summary>The ratios of two things measured by turns, round by round.</summary>
    public static Sample Ratio(IReadOnlyList<double> of, IReadOnlyList<double> to) => new(of.Zip(to, (a, b) => a / b));
}
