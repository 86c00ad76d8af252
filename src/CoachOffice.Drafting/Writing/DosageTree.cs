using System.Text.Json.Nodes;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Writing;

/// <summary>The dosage as a plain tree.</summary>
internal static class DosageTree
{
    public static JsonObject Of(Dosage dosage) => new EntryTree()
        .Number("most-drills", dosage.MostDrills).Number("one-drill-below-minutes", dosage.OneDrillBelowMinutes).Number("two-drills-below-minutes", dosage.TwoDrillsBelowMinutes)
        .Number("fewest-reps", dosage.FewestReps).Number("shortest-session-minutes", dosage.ShortestSessionMinutes).Number("sessions-a-week", dosage.SessionsAWeek)
        .Number("most-full-speed-balls", dosage.MostFullSpeedBalls).Number("look-again-after-days", dosage.LookAgainAfterDays)
        .Nodes("stages", dosage.Stages.Select(One)).Tree;

    private static JsonObject One(StageDosage stage) => new EntryTree()
        .Text("stage", Terms.Of(stage.Stage)).Number("reps-per-minute", stage.RepsPerMinute).Number("most-reps", stage.MostRepsPerSession)
        .Node("days", new JsonArray(stage.ShortestDays, stage.LongestDays)).Tree;
}
