namespace CoachOffice.Domain.Measuring;

/// <summary>The few measures the laws of ordering and the checks call by name; all others are known by the rulebook alone.</summary>
public static class NamedMeasures
{
    /// <summary>Held against the student's own goal.</summary>
    public static MeasureId ClubSpeed { get; } = MeasureId.From("club-speed");

    public static MeasureId ClubPath { get; } = MeasureId.From("club-path");

    public static MeasureId FaceToPath { get; } = MeasureId.From("face-to-path");

    /// <summary>Held against path and face to path of the same swing.</summary>
    public static MeasureId StartDirection { get; } = MeasureId.From("start-direction");

    /// <summary>Where the ball met the face, and where the swing met the turf: either shows the strike.</summary>
    public static IReadOnlyList<MeasureId> Strike { get; } =
        [MeasureId.From("contact-offset-toe"), MeasureId.From("contact-offset-high"), MeasureId.From("low-point")];

    /// <summary>Style while nothing comes of it.</summary>
    public static MeasureId LeadHandGrip { get; } = MeasureId.From("lead-hand-grip");

    public static MeasureId TopSpineTilt { get; } = MeasureId.From("top-spine-tilt");

    public static MeasureId AddressSpineTilt { get; } = MeasureId.From("address-spine-tilt");

    public static MeasureId ImpactSpineTilt { get; } = MeasureId.From("impact-spine-tilt");

    public static MeasureId ImpactShouldersOpen { get; } = MeasureId.From("impact-shoulders-open");

    public static MeasureId HeadDrift { get; } = MeasureId.From("head-drift");

    public static MeasureId DownswingPelvisShift { get; } = MeasureId.From("downswing-pelvis-shift");
}
