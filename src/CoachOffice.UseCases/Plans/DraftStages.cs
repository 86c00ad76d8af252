using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Plans;

/// <summary>From a draft's stages to a plan's rungs; steps and done-when are copied so that a plan never changes under the student.</summary>
internal static class DraftStages
{
    public static IReadOnlyList<StageContent> Of(Draft draft, Book book) =>
        [.. draft.Stages.Select(s => new StageContent(s.Fault, s.Stage, [.. s.Drills.Select(d => Drill(d, book))], Gate(s.Gate)))];

    /// <summary>A drill of the book with another's counts.</summary>
    public static PlanDrill Instead(Drill drill, PlanDrill counts) => counts with
    {
        Drill = drill.Id.Value,
        Name = drill.Name,
        Reps = Math.Min(counts.Reps, drill.MostReps ?? counts.Reps),
        Cue = drill.Cue,
        Steps = drill.Steps,
        DoneWhen = Sentence(drill.DoneWhen),
    };

    /// <summary>A gate that counts speaks of the rung's first drill; another drill there brings its own count.</summary>
    public static PlanGate Gate(PlanGate gate, IReadOnlyList<PlanDrill> before, IReadOnlyList<PlanDrill> after, Book book)
    {
        if (gate.Kind is not (GateKind.Count or GateKind.Outcome) || before[0].Drill == after[0].Drill) return gate;
        if (book.Find(DrillId.From(after[0].Drill)) is not { } first) return gate;
        var where = gate.Kind == GateKind.Count ? "on each of two separate days" : "with club and target changing every ball";
        return gate with { AtLeast = first.DoneWhen.Hits, Readings = first.DoneWhen.Of, Text = $"{Sentence(first.DoneWhen)}, {where}" };
    }

    private static string Sentence(DoneWhen done) => $"{done.Hits} of {done.Of} {done.What}";

    private static PlanGate Gate(DraftGate gate) => new()
    {
        Kind = gate.Kind,
        Measure = gate.Measure,
        AtLeast = gate.AtLeast,
        AtMost = gate.AtMost,
        Readings = gate.Readings,
        Text = gate.Text,
    };

    private static PlanDrill Drill(DraftDrill drafted, Book book)
    {
        var drill = book.Find(DrillId.From(drafted.Drill));
        return new PlanDrill
        {
            Drill = drafted.Drill,
            Name = drafted.Name,
            Sets = drafted.Sets,
            Reps = drafted.Reps,
            SessionsPerWeek = drafted.SessionsPerWeek,
            MinutesPerSession = drafted.MinutesPerSession,
            Cue = drafted.Cue,
            Steps = drill?.Steps ?? [],
            DoneWhen = drill is null ? "" : Sentence(drill.DoneWhen),
        };
    }
}
