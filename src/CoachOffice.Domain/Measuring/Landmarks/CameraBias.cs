namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>
/// How far a camera off square can move a value. It depends on what the picture does not show, the depth, of which a usual one is taken: own judgement, from own geometry.
/// </summary>
/// <param name="LeanDegrees">The line measured leans out of the picture by so much: a spine seen face-on by its forward bend, a shaft by its plane. For angles.</param>
/// <param name="DepthCm">The two places compared lie so far apart in depth. For lengths.</param>
/// <param name="TurnedDegrees">One of two lines compared is turned out of the picture by so much. For their ratio.</param>
internal sealed record CameraBias(double LeanDegrees = 0, double DepthCm = 0, double TurnedDegrees = 0)
{
    private const double Degree = Math.PI / 180;

    /// <summary>The largest move for a camera off by up to this angle to either side.</summary>
    public double Of(PictureMeasure measure, MarkedStill still, MarkedStill against)
    {
        var off = Math.Max(still.Marks.OffSquareDegrees, against.Marks.OffSquareDegrees) * Degree;
        var seen = measure.Value(new StillSight(still), new StillSight(against));
        if (measure.Unit == Unit.Degree) return Math.Max(Math.Abs(At(off) - seen), Math.Abs(At(-off) - seen));
        if (measure.Unit == Unit.Ratio) return seen * Math.Max(Shrunk(off), Shrunk(-off));
        return (Math.Abs(seen) * (1 - Math.Cos(off))) + (DepthCm * Math.Sin(off));

        double At(double turn) => measure.Value(new StillSight(still, turn, LeanDegrees * Degree), new StillSight(against));
    }

    /// <summary>The move of an upright line, or of two places beside each other; null for a ratio.</summary>
    public double? OfUsual(Unit unit, int offDegrees)
    {
        var off = Math.Sin(offDegrees * Degree);
        return unit == Unit.Degree ? Math.Atan(Math.Tan(LeanDegrees * Degree) * off) / Degree : unit == Unit.Centimetre ? DepthCm * off : null;
    }

    private double Shrunk(double off) => Math.Abs((Math.Cos(off + (TurnedDegrees * Degree)) / Math.Cos(off)) - Math.Cos(TurnedDegrees * Degree));
}
