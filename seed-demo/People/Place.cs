using CoachOffice.Domain.Students;
using Thing = CoachOffice.Domain.Students.Kit;

namespace CoachOffice.SeedDemo.People;

/// <summary>Where a student practises and what is at hand there.</summary>
internal sealed record Place(Room Room, IReadOnlyList<Kit> Kit)
{
    public static Place Home { get; } = new(Room.Home, [Thing.Mirror, Thing.Wall, Thing.Chair, Thing.Towel]);

    public static Place BareHome { get; } = new(Room.Home, []);

    public static Place Garden { get; } = new(Room.Garden, [Thing.SoftBall, Thing.AlignmentStick, Thing.Towel, Thing.Mirror]);

    public static Place Net { get; } = new(Room.Net, [Thing.Ball, Thing.Tee, Thing.Net, Thing.Mat, Thing.AlignmentStick]);

    public static Place Range { get; } = new(Room.Range, [Thing.Ball, Thing.Tee, Thing.AlignmentStick, Thing.Towel, Thing.Headcover]);

    public static Place FullRange { get; } = new(
        Room.Range,
        [Thing.Ball, Thing.Tee, Thing.AlignmentStick, Thing.Towel, Thing.Mirror, Thing.ImpactBag, Thing.FaceTape, Thing.Metronome, Thing.Wall]);

    public static Place Course { get; } = new(Room.Course, [Thing.Ball, Thing.Tee, Thing.AlignmentStick, Thing.FootPowderSpray, Thing.Mirror]);
}
