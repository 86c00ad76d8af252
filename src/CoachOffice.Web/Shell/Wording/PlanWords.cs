using CoachOffice.Domain.Plans;

namespace CoachOffice.Web.Shell.Wording;

/// <summary>The closed word lists of plans, said to a person.</summary>
internal static class PlanWords
{
    public static string Of(Stage stage) => stage switch
    {
        Stage.Rehearse => "Rehearse",
        Stage.Half => "Half swings",
        Stage.Full => "Full swings",
        Stage.Mix => "Mix it up",
        _ => "Take it to play",
    };

    public static string About(Stage stage) => stage switch
    {
        Stage.Rehearse => "slow, no ball",
        Stage.Half => "short and easy",
        Stage.Full => "with a ball",
        Stage.Mix => "new club and target every ball",
        _ => "on the course, one thought at most",
    };

    public static string Of(PlanStatus status) => status switch
    {
        PlanStatus.Draft => "Draft",
        PlanStatus.Active => "Active",
        PlanStatus.OnHold => "Paused",
        PlanStatus.Completed => "Completed",
        PlanStatus.Revoked => "Withdrawn",
        _ => "Entered in error",
    };

    public static string Of(StageStatus status) => status switch
    {
        StageStatus.Current => "now",
        StageStatus.Done => "done",
        StageStatus.Skipped => "left out",
        _ => "later",
    };

    public static string Of(ParkedReason reason) => reason switch
    {
        ParkedReason.ExplainedBy => "follows from",
        ParkedReason.TrainAfter => "comes after",
        ParkedReason.LimitOfTwo => "two things at a time are enough",
        ParkedReason.NoHarmShown => "a matter of style: nothing measured suffers from it",
        ParkedReason.TooSmall => "too small to work on",
        ParkedReason.Borderline => "too close to call; more readings would tell",
        _ => "no drill this student can do: see the coach in person, or a licensed professional",
    };

    public static string Of(WithheldReason reason) => reason switch
    {
        WithheldReason.Limit => "a recorded limit",
        WithheldReason.Kit => "needs kit the student has not got",
        WithheldReason.Room => "needs another place to practise",
        WithheldReason.Level => "not for this level",
        WithheldReason.Age => "not for this age",
        WithheldReason.TriedInVain => "tried without a change",
        WithheldReason.OppositeFault => "would push another value further out",
        _ => "does not fit into the week",
    };

    public static string Of(EditReason reason) => reason switch
    {
        EditReason.AlreadyDone => "Already done",
        EditReason.TriedInVain => "Tried without a change",
        EditReason.NotNow => "Not now",
        EditReason.DoubtIt => "I doubt it",
        EditReason.Risk => "Too risky",
        EditReason.DoesNotSuitThisPerson => "Does not suit this person",
        EditReason.NotFeasible => "Cannot be done there",
        _ => "Better words",
    };

    public static string Of(GateKind kind) => kind switch
    {
        GateKind.Count => "counts",
        GateKind.Measure => "a re-test",
        GateKind.Outcome => "what the ball does",
        _ => "the coach's word",
    };
}
