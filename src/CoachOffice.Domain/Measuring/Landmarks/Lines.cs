namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>Angles of lines between places whose X is toward the target or ball and whose Y is upward; in degrees.</summary>
internal static class Lines
{
    private const double HalfTurn = 180;

    /// <summary>How far a line leans from upright, positive toward; from -180 up to 180.</summary>
    public static double Lean(Pixel foot, Pixel head) => Degrees(Math.Atan2(head.X - foot.X, head.Y - foot.Y));

    /// <summary>The angle at a corner between two arms; from 0 to 180.</summary>
    public static double Corner(Pixel one, Pixel corner, Pixel other)
    {
        var (a, b) = (one - corner, other - corner);
        return Math.Abs(Degrees(Math.Atan2((a.X * b.Y) - (a.Y * b.X), (a.X * b.X) + (a.Y * b.Y))));
    }

    /// <summary>How steeply a line rises away from the ball: 0 lies level, 90 stands upright, more than 90 leans over the ball. Which end is named first does not matter.</summary>
    public static double Rise(Pixel one, Pixel other)
    {
        var rise = Degrees(Math.Atan2(other.Y - one.Y, one.X - other.X));
        return rise < 0 ? rise + HalfTurn : rise;
    }

    /// <summary>The smaller way round from one rise to another; above -90, up to 90.</summary>
    public static double Steeper(double rise, double than)
    {
        var by = (rise - than) % HalfTurn;
        if (by > HalfTurn / 2) return by - HalfTurn;
        return by <= -HalfTurn / 2 ? by + HalfTurn : by;
    }

    private static double Degrees(double radians) => radians * HalfTurn / Math.PI;
}
