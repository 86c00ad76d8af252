namespace CoachOffice.Domain.Measuring;

/// <summary>Converts an angle as a coach reads it with a protractor into the tilt the rulebook stores (common practice, no source).</summary>
public static class AsRead
{
    private const double Upright = 90;

    /// <summary>
    /// A line's angle read from the ground on the target side: 102 is a tilt of 12 degrees away from the target, 112 one of 22.
    /// Neither the student's hand nor a mirrored picture changes the result, since the target side is named and not left or right.
    /// </summary>
    public static Quantity TiltFromTargetSide(Quantity asRead) => new(Math.Round(asRead.In(Unit.Degree).Value - Upright, 9), Unit.Degree);

    /// <summary>What a stored tilt reads as from the ground on the target side.</summary>
    public static Quantity OnTargetSide(Quantity tilt) => new(Math.Round(tilt.In(Unit.Degree).Value + Upright, 9), Unit.Degree);
}
