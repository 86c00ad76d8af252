using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads one condition of a pattern: a short sentence, or a mapping <c>any</c> or <c>same-side</c>.</summary>
internal sealed class ConditionSyntax(Shelf shelf)
{
    private const string Forms =
        "write M.low, M.high or M.out (perhaps 'at least moderate'), M below 2, M above 2, M in range, M not in range, M measured, M not measured, "
        + "M read at least 8 times, or at least 4 others in range";

    private static readonly string[] Severities = [Terms.Of(Grade.Mild), Terms.Of(Grade.Moderate), Terms.Of(Grade.Marked)];

    /// <summary>The condition, or null with a fault.</summary>
    /// <param name="node">The condition as written.</param>
    /// <param name="patterns">True where <c>pattern P</c> is allowed.</param>
    public Condition? Read(Node node, bool patterns)
    {
        var before = shelf.Faults.Count;
        var condition = node switch
        {
            MapNode map => Grouped(map, patterns),
            ScalarNode { Scalar: ScalarKind.Text } text => Sentence(text, patterns),
            _ => null,
        };
        if (condition is null && shelf.Faults.Count == before) shelf.Faults.Add(node, $"no condition is read from {node.Kind}; {Forms}");
        return shelf.Faults.Count == before ? condition : null;
    }

    private Condition? Grouped(MapNode map, bool patterns)
    {
        var entry = new Entry(map, shelf.Faults);
        var (any, same) = (entry.Find("any"), entry.Find("same-side"));
        entry.Close();
        if ((any is null) == (same is null))
        {
            if (entry.Sound) shelf.Faults.Add(map, "write one of { any: [..] } and { same-side: [M1, M2] }");
            return null;
        }

        if (any is not null) return new AnyOfCondition([.. Two(entry, "any").Select(item => Read(item, patterns)).OfType<Condition>()]);
        return new SameSideCondition(entry.Distinct(Two(entry, "same-side"), shelf.Ids.Measure));
    }

    private IReadOnlyList<Node> Two(Entry entry, string name)
    {
        var items = entry.SomeItems(name);
        if (items.Count == 1) shelf.Faults.Add(items[0], $"'{name}' needs at least two items");
        return items;
    }

    private Condition? Sentence(ScalarNode text, bool patterns)
    {
        var words = text.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words switch
        {
            ["at", "least", var count, "others", "in", "range"] => Count(text, count) is { } least ? new OthersInRangeCondition(least) : null,
            ["pattern", var id] => Fired(text, id, patterns),
            [var id, "below", var bound] => Value(text, id, Side.Low, bound),
            [var id, "above", var bound] => Value(text, id, Side.High, bound),
            [var id, "in", "range"] => State(text, id, MeasureState.InRange),
            [var id, "not", "in", "range"] => State(text, id, MeasureState.NotInRange),
            [var id, "measured"] => State(text, id, MeasureState.Measured),
            [var id, "not", "measured"] => State(text, id, MeasureState.NotMeasured),
            [var id, "read", "at", "least", var count, "times"] => Count(text, count) is { } least ? new ReadingsCondition(Measure(text, id), least) : null,
            [var fault] => Out(text, fault, Severities[0]),
            [var fault, "at", "least", var grade] => Out(text, fault, grade),
            _ => null,
        };
    }

    private OutCondition? Out(ScalarNode text, string fault, string grade)
    {
        var dot = fault.LastIndexOf('.');
        if (dot <= 0 || (dot == fault.Length - 1)) return null;
        var end = fault[(dot + 1)..];
        if (end is not ("low" or "high" or "out")) return null;
        if (!Severities.Contains(grade)) At(text, grade, $"{Words.Quote(grade)} is no severity{Words.Right(grade, Severities)}");
        var side = end == "low" ? Side.Low : end == "high" ? Side.High : Side.None;
        return new OutCondition(Measure(text, fault[..dot]), side, Terms.TryParse<Grade>(grade, out var least) ? least : Grade.Mild);
    }

    private FiredCondition? Fired(ScalarNode text, string id, bool patterns)
    {
        if (!patterns) shelf.Faults.Add(text, "'pattern P' is read only under unless");
        return patterns ? new FiredCondition(shelf.Ids.PatternIn(text, id, text.Text.IndexOf(id, "pattern".Length, StringComparison.Ordinal))) : null;
    }

    private ValueCondition? Value(ScalarNode text, string id, Side side, string bound)
    {
        var isNumber = double.TryParse(bound, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number);
        var measure = Measure(text, id);
        if (!isNumber) At(text, bound, $"a number is expected, not {Words.Quote(bound)}");
        else if (shelf.Measures.TryGetValue(measure, out var known) && !known.Plausible.Contains(number))
            At(text, bound, $"{bound} lies beyond the plausible {Single.Show(known.Plausible)} {known.Unit} of {id}");
        return isNumber ? new ValueCondition(measure, side, number) : null;
    }

    private StateCondition State(ScalarNode text, string id, MeasureState state) => new(Measure(text, id), state);

    private MeasureId Measure(ScalarNode text, string id) => shelf.Ids.MeasureIn(text, id, text.Text.IndexOf(id, StringComparison.Ordinal));

    private int? Count(ScalarNode text, string word)
    {
        if (int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= 1000) return count;
        At(text, word, $"a whole number from 1 to 1000 is expected, not {Words.Quote(word)}");
        return null;
    }

    private void At(ScalarNode text, string word, string message) =>
        shelf.Faults.Add(text.Letter(Math.Max(0, text.Text.LastIndexOf(word, StringComparison.Ordinal))), text.Path, message);
}
