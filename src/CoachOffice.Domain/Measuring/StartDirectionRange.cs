namespace CoachOffice.Domain.Measuring;

/// <summary>
/// Where a ball can be expected to start, from what the club did: 61 to 83 % of the way from the path to the face (Wood, Henrikson and Broadie 2018), and the face is path + face to path.
/// A range and not a number, since club, loft and strike decide where in it.
/// </summary>
public static class StartDirectionRange
{
    private const double NearPath = 0.61;
    private const double NearFace = 0.83;

    /// <summary>The lowest and the highest start direction, in degrees, positive toward the in-to-out side.</summary>
    /// <param name="path">Club path, positive in-to-out.</param>
    /// <param name="faceToPath">Face to path, positive open.</param>
    public static Limits Of(Quantity path, Quantity faceToPath)
    {
        var (from, turn) = (path.In(Unit.Degree).Value, faceToPath.In(Unit.Degree).Value);
        var (one, other) = (from + NearPath * turn, from + NearFace * turn);
        return new Limits(Math.Min(one, other), Math.Max(one, other));
    }
}
