using System.Globalization;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Benchmarks.Engine;

/// <summary>Patterns as expressions for RulesEngine, over <see cref="RuleLesson"/>. It has no chaining, so a pattern under `unless` is written out where it is named.</summary>
internal sealed class RuleText(Rulebook book)
{
    private readonly Dictionary<MeasureId, int> _rowOf = book.Measures.Select((m, i) => (m.Id, i)).ToDictionary();
    private readonly Dictionary<PatternId, string> _known = [];

    public string Of(Pattern pattern)
    {
        if (_known.TryGetValue(pattern.Id, out var known)) return known;
        var parts = pattern.When.Select(c => Wanted(c, pattern))
            .Concat(pattern.Needs.Select(m => string.Create(CultureInfo.InvariantCulture, $"lesson.InRange({_rowOf[m]})")))
            .Append($"({string.Join(" || ", pattern.When.SelectMany(c => Heavy(c, pattern)).DefaultIfEmpty("false"))})")
            .Concat(pattern.Unless.Select(c => $"!({Excluded(c, pattern)})"));
        var clubs = pattern.Clubs.Count == 0 ? parts : parts.Prepend($"({string.Join(" || ", pattern.Clubs.Select(c => string.Create(CultureInfo.InvariantCulture, $"lesson.Club == {(int)c}")))})");
        return _known[pattern.Id] = string.Join(" && ", clubs);
    }

    private string Wanted(Condition condition, Pattern pattern) => condition switch
    {
        OutCondition c => Out(c.Measure, c.Side, Math.Max(1, c.AtLeast - Grade.Mild + 1)),
        ValueCondition c => string.Create(CultureInfo.InvariantCulture, $"lesson.Beyond({_rowOf[c.Measure]}, {(int)c.Side}, {c.Bound:0.0###})"),
        StateCondition c => string.Create(CultureInfo.InvariantCulture, $"{StateOf(c.State)}({_rowOf[c.Measure]})"),
        ReadingsCondition c => string.Create(CultureInfo.InvariantCulture, $"lesson.Counted({_rowOf[c.Measure]}) >= {c.AtLeast}"),
        OthersInRangeCondition c => string.Create(CultureInfo.InvariantCulture, $"lesson.Others(\"{pattern.Id.Value}\") >= {c.AtLeast}"),
        SameSideCondition c => $"(({string.Join(" && ", c.Measures.Select(m => Out(m, Side.Low, 1)))}) || ({string.Join(" && ", c.Measures.Select(m => Out(m, Side.High, 1)))}))",
        AnyOfCondition c => $"({string.Join(" || ", c.Any.Select(b => Wanted(b, pattern)))})",
        FiredCondition c => $"({Of(book.Find(c.Pattern)!)})",
        _ => throw new InvalidOperationException($"No text for {condition.GetType().Name}."),
    };

    private string Excluded(Condition condition, Pattern pattern) => condition switch
    {
        StateCondition { State: MeasureState.NotInRange } c => string.Create(CultureInfo.InvariantCulture, $"lesson.OutsideRead({_rowOf[c.Measure]})"),
        AnyOfCondition c => $"({string.Join(" || ", c.Any.Select(b => Excluded(b, pattern)))})",
        _ => Wanted(condition, pattern),
    };

    private IEnumerable<string> Heavy(Condition condition, Pattern pattern) => condition switch
    {
        OutCondition c => [Out(c.Measure, c.Side, Math.Max(2, c.AtLeast - Grade.Mild + 1))],
        ValueCondition c => [$"({Wanted(c, pattern)} && {Out(c.Measure, c.Side, 2)})"],
        SameSideCondition c => c.Measures.Select(m => $"({Wanted(c, pattern)} && {Out(m, Side.None, 2)})"),
        AnyOfCondition c => c.Any.SelectMany(b => Heavy(b, pattern)),
        _ => [],
    };

    private string Out(MeasureId measure, Side side, int weight) => string.Create(CultureInfo.InvariantCulture, $"lesson.Out({_rowOf[measure]}, {(int)side}, {weight})");

    private static string StateOf(MeasureState state) => state switch
    {
        MeasureState.InRange => "lesson.InRange",
        MeasureState.NotInRange => "!lesson.InRange",
        MeasureState.Measured => "lesson.Read",
        _ => "!lesson.Read",
    };
}
