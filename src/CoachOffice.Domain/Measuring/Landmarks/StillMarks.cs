using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>What a coach says and marks of one still; it reads nothing by itself.</summary>
public sealed record StillMarks
{
    /// <summary>A careful guess of how far a camera stands off square when nobody measured it, in degrees (own judgement).</summary>
    public const double UsualOffSquareDegrees = 5;

    /// <summary>The side of the picture that lies toward the target, seen face-on; toward the ball, seen down the line. It settles the student's hand and a mirrored picture together.</summary>
    public PictureSide Toward { get; init; }

    /// <summary>How far the camera may have stood off square, in degrees, 0 to 45.</summary>
    public double OffSquareDegrees { get; init; } = UsualOffSquareDegrees;

    /// <summary>How long the known length is, in cm; null when there is none in the picture.</summary>
    public double? KnownLengthCm { get; init; }

    /// <summary>At most one for each landmark.</summary>
    public IReadOnlyList<Mark> Marks { get; init; } = [];

    /// <summary>Where a landmark is, or null.</summary>
    public Pixel? At(Landmark landmark) => Marks.FirstOrDefault(m => m.Landmark == landmark)?.At;

    /// <summary>
    /// The side toward the target of a picture that is not mirrored: seen face-on a right-handed player's target is on the right of the picture, and seen down the line
    /// the ball is. For a left-handed player, and in a mirrored picture, both are on the left.
    /// </summary>
    public static PictureSide UsualSide(Hand hand) => hand == Hand.Right ? PictureSide.Right : PictureSide.Left;
}
