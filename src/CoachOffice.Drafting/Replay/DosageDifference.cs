using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Replay;

/// <summary>Whether two books give drills out in other amounts. The days of a stage and the day to look again are set when a plan is approved, not drafted.</summary>
internal static class DosageDifference
{
    public static bool Between(Dosage inForce, Dosage edited) => Text(inForce) != Text(edited);

    private static string Text(Dosage dosage) =>
        DefinitionText.Of(dosage, nameof(Dosage.Stages), nameof(Dosage.LookAgainAfterDays)) + '\n'
        + DefinitionText.OfAll(dosage.Stages.OrderBy(s => s.Stage), nameof(StageDosage.ShortestDays), nameof(StageDosage.LongestDays));
}
