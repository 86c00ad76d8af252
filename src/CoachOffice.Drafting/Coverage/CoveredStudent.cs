using CoachOffice.Domain;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Coverage;

/// <summary>One kind of student a rulebook has to have an answer for.</summary>
/// <param name="Room">Where practice happens.</param>
/// <param name="HasKit">With what most students have, or with nothing at all.</param>
/// <param name="Level">How experienced.</param>
/// <param name="Limit">One recorded limit, or none.</param>
public sealed record CoveredStudent(Room Room, bool HasKit, Level Level, BodyLimit? Limit)
{
    /// <summary>What most students have at hand or can find (common practice, no source).</summary>
    public static IReadOnlyList<Kit> UsualKit { get; } =
        [Kit.Ball, Kit.Tee, Kit.AlignmentStick, Kit.Towel, Kit.Mirror, Kit.Chair, Kit.Wall, Kit.Headcover];

    /// <summary>Every room, with and without kit, every level, no limit or one in any region. A cleared limit withdraws nothing and needs no row of its own.</summary>
    public static IReadOnlyList<CoveredStudent> All { get; } =
    [
        .. from room in Enum.GetValues<Room>()
           from kit in new[] { false, true }
           from level in Enum.GetValues<Level>()
           from limit in Limits()
           select new CoveredStudent(room, kit, level, limit),
    ];

    private static List<BodyLimit?> Limits() =>
    [
        null,
        .. from status in new[] { LimitStatus.Current, LimitStatus.Past }
           from region in Enum.GetValues<Region>()
           select new BodyLimit(region, status),
    ];

    /// <summary>E.g. "home, no kit, beginner, lower-back current".</summary>
    public override string ToString() =>
        $"{Terms.Of(Room)}, {(HasKit ? "usual kit" : "no kit")}, {Terms.Of(Level)}, {(Limit is null ? "no limit" : $"{Terms.Of(Limit.Region)} {Terms.Of(Limit.Status)}")}";
}
