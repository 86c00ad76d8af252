using System.Globalization;
using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests.Checks;

/// <summary>A tiny rulebook in which everything is in order: five invented measures wanted from 0 to 10 with a step of 4, a ladder for each fault. A test adds what it is about.</summary>
internal sealed class BookUnderCheck
{
    private static readonly (string Id, string Moment)[] Measures = [("early", "top"), ("middle", "early-downswing"), ("late", "impact"), ("strike", "finish"), ("flight", "finish")];

    private readonly List<string> _moreDrills = [];
    private readonly Dictionary<string, string> _ranges = Measures.ToDictionary(m => m.Id, _ => "driver: [0, 10], fairway: [0, 10], hybrid: [0, 10], iron: [0, 10], wedge: [0, 10]");
    private readonly Dictionary<string, string> _measures = Measures.ToDictionary(m => m.Id, _ => "");
    private readonly Dictionary<string, string> _opposites = [];
    private readonly Dictionary<string, double> _errors = [];
    private readonly List<string> _patterns = [];
    private string _extra = "";

    /// <summary>A pattern: its first word is the id; the rest are lines below it.</summary>
    public BookUnderCheck Pattern(string id, string precedence, params string[] lines)
    {
        string[] all = [$"  - id: {id}", $"name: The {id}", $"precedence: {precedence}", "because: So it is", "rationale: Invented", .. lines];
        if (!lines.Any(l => l.StartsWith("explains:", StringComparison.Ordinal))) all = [.. all, "explains: []"];
        _patterns.Add(string.Join("\n    ", all));
        return this;
    }

    public BookUnderCheck Range(string measure, string clubs)
    {
        _ranges[measure] = clubs;
        return this;
    }

    /// <summary>Further keys of a measure.</summary>
    public BookUnderCheck Measure(string measure, string keys)
    {
        _measures[measure] = keys;
        return this;
    }

    /// <summary>The error that more swings do not shrink.</summary>
    public BookUnderCheck WithError(string measure, double setup)
    {
        _errors[measure] = setup;
        return this;
    }

    /// <summary>Every drill for a fault pushes another further out.</summary>
    public BookUnderCheck Opposite(string fault, string pushed)
    {
        _opposites[fault] = pushed;
        return this;
    }

    /// <summary>Further top-level text.</summary>
    public BookUnderCheck With(string yaml)
    {
        _extra += yaml + "\n";
        return this;
    }

    /// <summary>Further drills, as entries of the list.</summary>
    public BookUnderCheck Drill(string entry)
    {
        _moreDrills.Add(entry);
        return this;
    }

    public LoadedRulebook Load()
    {
        var read = RulebookReader.Load(RulebookText.Of(Files()));
        Assert.Empty(read.Faults);
        return read.Value;
    }

    /// <summary>The anomalies of one kind.</summary>
    public IReadOnlyList<Anomaly> Find(AnomalyKind kind) => [.. RuleBaseCheck.Of(Load()).Where(a => a.Kind == kind)];

    private Dictionary<string, string> Files() => new()
    {
        ["dosage.yaml"] = UsualDosage.Text,
        ["measures.yaml"] = "measures:\n" + string.Join("\n", Measures.Select((m, i) => MeasureText(m.Id, m.Moment, i))),
        ["ranges.yaml"] = "ranges:\n" + string.Join("\n", _ranges.Where(r => r.Value.Length > 0).Select(r => $"  - {{ measure: {r.Key}, {r.Value} }}")),
        ["patterns.yaml"] = "patterns:\n" + string.Join("\n", _patterns),
        ["drills.yaml"] = "drills:\n" + string.Join("\n", Faults().SelectMany(DrillTexts).Concat(_moreDrills)),
        ["progressions.yaml"] = "progressions:\n" + string.Join("\n", Faults().Select(LadderText)),
        ["extra.yaml"] = "name: Tiny\n" + _extra,
    };

    private string MeasureText(string id, string moment, int row) =>
        $"  - {{ id: {id}, name: {id}, order: {row + 1}, unit: deg, view: face-on, moment: {moment}, positive: more, how: Read it, plausible: [-100, 100], error: {{ setup: {_errors.GetValueOrDefault(id, 0.1).ToString(CultureInfo.InvariantCulture)}, swing: 0.5 }}, step: 4, instruments: [video]{_measures[id]} }}";

    private IEnumerable<string> Faults() =>
        Measures.Where(m => _ranges[m.Id].Length > 0).SelectMany(m => new[] { $"{m.Id}.low", $"{m.Id}.high" });

    private IEnumerable<string> DrillTexts(string fault) => new[] { "rehearse", "half", "full" }.Select(stage =>
        $"  - {{ id: {Name(fault)}-{stage}, name: Drill, trains: [{fault}], stages: [{stage}], rooms: [home, range], club: none, steps: [Do it], cue: see it, done-when: {{ hits: 8, of: 10, what: swings }}{Opposites(fault)} }}");

    private string Opposites(string fault) => _opposites.TryGetValue(fault, out var pushed) ? $", opposites: [{pushed}]" : "";

    private static string LadderText(string fault) =>
        $"  - {{ id: {Name(fault)}-ladder, name: Ladder, faults: [{fault}], rehearse: [{Name(fault)}-rehearse], half: [{Name(fault)}-half], full: [{Name(fault)}-full] }}";

    private static string Name(string fault) => fault.Replace('.', '-');
}
