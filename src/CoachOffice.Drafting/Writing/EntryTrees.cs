using System.Text.Json.Nodes;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Writing;

/// <summary>Entries of the model as plain trees in the names and order of the rulebook's files; what is empty or has its default is left out.</summary>
internal static class EntryTrees
{
    public static JsonObject Of(Drill drill) => new EntryTree()
        .Text("id", drill.Id.Value).Text("name", drill.Name)
        .List("trains", FaultTexts.Of(drill.Trains), always: true).Words("stages", drill.Stages).Words("kit", drill.Kit).Words("rooms", drill.Rooms)
        .Text("club", Terms.Of(drill.Club)).List("loads", LoadTexts.Of(drill.Loads)).Number("from-age", drill.FromAge).Words("levels", drill.Levels)
        .List("steps", drill.Steps).Text("cue", drill.Cue).Number("most-reps", drill.MostReps)
        .Map("done-when", new EntryTree().Number("hits", drill.DoneWhen.Hits).Number("of", drill.DoneWhen.Of).Text("what", drill.DoneWhen.What))
        .List("opposites", FaultTexts.Of(drill.Opposites)).List("cautions", drill.Cautions.Select(id => id.Value)).Source(drill.Source).Tree;

    public static JsonObject Of(Pattern pattern) => new EntryTree()
        .Text("id", pattern.Id.Value).Text("name", pattern.Name).Number("precedence", pattern.Precedence).Words("clubs", pattern.Clubs)
        .Nodes("when", pattern.When.Select(ConditionTrees.Of)).List("needs", pattern.Needs.Select(id => id.Value)).Nodes("unless", pattern.Unless.Select(ConditionTrees.Of))
        .Text("unread", pattern.Unread is { } unread ? Terms.Of(unread) : null)
        .List("root", FaultTexts.Of(pattern.Root)).List("explains", FaultTexts.Of(pattern.Explains), always: true)
        .List("explains-if-present", FaultTexts.Of(pattern.ExplainsIfPresent)).List("over", pattern.Over.Select(id => id.Value))
        .List("before", pattern.Before.Select(id => id.Value)).List("forbids", FaultTexts.Of(pattern.Forbids))
        .Text("because", pattern.Because).Text("rationale", pattern.Rationale).Text("debatable", pattern.Debatable).Source(pattern.Source).Tree;

    public static JsonObject Of(Progression progression)
    {
        var tree = new EntryTree().Text("id", progression.Id.Value).Text("name", progression.Name).List("faults", FaultTexts.Of(progression.Faults));
        foreach (var rung in progression.Rungs) tree.List(Terms.Of(rung.Stage), rung.Drills.Select(id => id.Value));
        return tree.Tree;
    }

    public static JsonObject Of(Caution caution) =>
        new EntryTree().Text("id", caution.Id.Value).Text("when", Terms.Of(caution.Occasion)).Text("text", caution.Text).Tree;

    public static JsonObject Of(TrainAfter law) =>
        new EntryTree().Text("work", law.Work.Value).List("after", law.After.Select(id => id.Value)).Text("because", law.Because).Tree;

    public static JsonObject Of(GoalMeasures goal) => new EntryTree()
        .Text("goal", Terms.Of(goal.Goal)).List("measures", goal.Measures.Select(id => id.Value)).List("driver-only", goal.DriverOnly.Select(id => id.Value)).Tree;

    public static JsonObject Of(RangeAdjustment adjustment) => new EntryTree()
        .Text("measure", adjustment.Measure.Value).Number("from-age", adjustment.FromAge == 0 ? null : adjustment.FromAge).Words("levels", adjustment.Levels ?? [])
        .Number("low-by", adjustment.LowBy == 0 ? null : adjustment.LowBy).Number("high-by", adjustment.HighBy == 0 ? null : adjustment.HighBy).Source(adjustment.Source).Tree;

    public static JsonObject Of(IReadOnlyList<WantedRange> ranges)
    {
        var tree = new EntryTree().Text("measure", ranges[0].Measure.Value).Source(ranges[0].Source).Text("card", ranges[0].Card);
        foreach (var range in ranges) tree.Node(Terms.Of(range.Club), One(range));
        return tree.Tree;
    }

    public static JsonObject Of(Measure measure, int order)
    {
        var tree = new EntryTree()
            .Text("id", measure.Id.Value).Text("name", measure.Name).Number("order", order).Text("unit", measure.Unit.Symbol)
            .Text("view", Terms.Of(measure.View)).Text("moment", Terms.Of(measure.Moment)).Text("positive", measure.Positive).Text("negative", measure.Negative)
            .Text("how", measure.HowTo).Node("plausible", Pair(measure.Plausible)).Node("doubtful", measure.Doubtful is { } doubtful ? Pair(doubtful) : null)
            .Map("error", new EntryTree().Number("setup", measure.SetupError).Number("swing", measure.SwingError)).Number("step", measure.Step)
            .Words("instruments", measure.Instruments).Words("no-fault", measure.NoFaultSides).Flag("style-only", measure.StyleOnly).Flag("outcome", measure.Outcome)
            .Flag("scales-with-stature", measure.ScalesWithStature).Flag("needs-fast-video", measure.NeedsFastVideo);
        if (measure.Derived is { } derived) tree.Map("derived", new EntryTree().List(Terms.Of(derived.Kind), derived.Parts.Select(id => id.Value)));
        return tree.Tree;
    }

    public static JsonObject Of(PatternCase one)
    {
        var readings = new EntryTree();
        foreach (var reading in one.Readings)
        {
            if (reading.Readings == 1) readings.Number(reading.Measure.Value, reading.Value.Value);
            else readings.Map(reading.Measure.Value, new EntryTree().Number("value", reading.Value.Value).Number("readings", reading.Readings));
        }

        return new EntryTree()
            .Text("pattern", one.Pattern.Value).Text("name", one.Name).Text("club", Terms.Of(one.Club)).Map("readings", readings)
            .Number("club-speed-goal", one.ClubSpeedGoal?.Value).Node("fires", one.Fires).Text("why", one.Why).Tree;
    }

    private static JsonNode One(WantedRange range)
    {
        if (range.FromGoal) return "goal";
        return range.Aim is { } aim ? new EntryTree().Node("range", Pair(range.Limits)).Node("aim", Pair(aim)).Tree : Pair(range.Limits);
    }

    private static JsonArray Pair(Limits limits) => [limits.Low, limits.High];
}
