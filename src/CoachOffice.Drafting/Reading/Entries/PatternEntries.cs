using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads <c>patterns</c>: what must be there, what must not, which finding is the root and what it explains.</summary>
internal sealed class PatternEntries(Shelf shelf)
{
    private readonly ConditionSyntax _conditions = new(shelf);
    private readonly FaultSyntax _faults = new(shelf);
    private readonly PatternSense _sense = new(shelf.Faults);
    private readonly CycleCheck _suppressions = new("the patterns hold each other back");
    private readonly CycleCheck _first = new("the patterns wait for each other");

    /// <summary>All sound patterns, by id.</summary>
    public IReadOnlyList<Pattern> Read()
    {
        var found = shelf.ReadAll("patterns", One).OrderBy(p => p.Id.Value, StringComparer.Ordinal).ToList();
        _suppressions.Report(shelf.Faults);
        _first.Report(shelf.Faults);
        return found;
    }

    /// <summary>Where the root of a pattern stands.</summary>
    public Dictionary<PatternId, Node> Roots { get; } = [];

    private Pattern One(Entry entry)
    {
        var pattern = new Pattern
        {
            Id = PatternId.From(entry.Require("id") is { } id ? Single.NewId(id, shelf.Faults) : "?"),
            Name = entry.Text("name"),
            Precedence = entry.Whole("precedence", 0, 100_000),
            Clubs = entry.WordsIf<Club>("clubs"),
            When = Conditions(entry.SomeItems("when"), patterns: false),
            Needs = entry.Distinct(entry.ItemsIf("needs"), shelf.Ids.Measure),
            Unless = Conditions(entry.ItemsIf("unless"), patterns: true),
            Root = Root(entry),
            Explains = _faults.List(entry, entry.Items("explains")),
            ExplainsIfPresent = _faults.List(entry, entry.ItemsIf("explains-if-present")),
            Over = entry.Distinct(entry.ItemsIf("over"), shelf.Ids.Pattern),
            Before = entry.Distinct(entry.ItemsIf("before"), shelf.Ids.Pattern),
            Forbids = _faults.List(entry, entry.ItemsIf("forbids")),
            Unread = entry.WordIf<UnreadReadings>("unread") is UnreadReadings.Suggest ? UnreadReadings.Suggest : null,
            Because = entry.Text("because"),
            Rationale = entry.Text("rationale"),
            Debatable = entry.TextIf("debatable"),
            Source = entry.Source(),
        };
        if (entry.Sound) Note(entry, pattern);
        return pattern;
    }

    private void Note(Entry entry, Pattern pattern)
    {
        Roots[pattern.Id] = entry.Find("root")!;
        _sense.Check(entry, pattern);
        foreach (var other in FiredIn(pattern.Unless))
            _suppressions.Add(pattern.Id.Value, other.Value, entry.Find("unless")!);
        foreach (var later in pattern.Before.Where(later => later != pattern.Id)) _first.Add(pattern.Id.Value, later.Value, entry.Find("before")!);
    }

    private IReadOnlyList<FaultId> Root(Entry entry) => entry.Require("root") switch
    {
        null => [],
        ListNode => _faults.List(entry, entry.SomeItems("root")),
        var single => _faults.OneOrBoth(single),
    };

    private List<Condition> Conditions(IReadOnlyList<Node> items, bool patterns) =>
        [.. items.Select(item => _conditions.Read(item, patterns)).OfType<Condition>()];

    private static IEnumerable<PatternId> FiredIn(IEnumerable<Condition> conditions) => conditions.SelectMany(condition => condition switch
    {
        FiredCondition fired => [fired.Pattern],
        AnyOfCondition any => FiredIn(any.Any),
        _ => [],
    });
}
