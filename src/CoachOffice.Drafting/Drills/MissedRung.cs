using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Drafting.Drills;

/// <summary>A stage for which nothing is left for this student.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Because">The reason that could change most easily; null when the ladder itself has no drill there.</param>
internal sealed record MissedRung(Stage Stage, WithheldReason? Because)
{
    /// <summary>Time, another try, another fault, another place, kit: all of them may change sooner than a body does.</summary>
    private static readonly WithheldReason[] EasiestFirst =
    [
        WithheldReason.Time, WithheldReason.TriedInVain, WithheldReason.OppositeFault, WithheldReason.Room,
        WithheldReason.Kit, WithheldReason.Level, WithheldReason.Age, WithheldReason.Limit,
    ];

    /// <summary>The stage with the easiest of the reasons for which its drills were withheld.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="withheld">The drills withheld so far.</param>
    /// <param name="from">Where those of this stage begin.</param>
    public static MissedRung Of(Stage stage, IReadOnlyList<DraftWithheld> withheld, int from)
    {
        var easiest = EasiestFirst.Length;
        for (var i = from; i < withheld.Count; i++) easiest = Math.Min(easiest, Array.IndexOf(EasiestFirst, withheld[i].Reason));
        return new MissedRung(stage, easiest < EasiestFirst.Length ? EasiestFirst[easiest] : null);
    }
}
