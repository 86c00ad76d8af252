using System.Globalization;
using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Words;

namespace CoachOffice.Drafting;

/// <summary>A draft for a person to read: what was seen, what drives what, what to work on and why, what waits, what to measure next.</summary>
public sealed class DraftText
{
    private readonly StringBuilder _text = new();
    private readonly Draft _draft;
    private readonly Rulebook _book;

    private DraftText(Draft draft, Rulebook book) => (_draft, _book) = (draft, book);

    /// <summary>Plain text, lines ended by LF.</summary>
    public static string Write(Draft draft, Rulebook book)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(book);
        var text = new DraftText(draft, book);
        text.Write();
        return text._text.ToString();
    }

    private void Write()
    {
        Section("What was read", _draft.Findings.Select(Read));
        Section("What drives what", _draft.Causes.SelectMany(Cause));
        Focus();
        Section("Left for later", _draft.Parked.Select(Parked));
        Section("Drills not offered", _draft.Withheld.GroupBy(Reason).Select(g => $"{g.Key}: {string.Join("; ", g.Select(w => DrillName(w.Drill)))}"));
        Section("Measure next", _draft.MeasureNext.Select(n => $"{Name(n.Measure)}: {n.Because}"));
        Section("Leave alone, it is good", _draft.Strengths.Select(Name));
        Section("Mind", _draft.Cautions.Select(c => c.Text));
        Line($"Made by {_draft.Engine} from \"{_draft.Rulebook.Name}\" ({_draft.Rulebook.Sha256[..12]}). Ranges marked provisional are common practice, not published.");
    }

    private void Focus()
    {
        if (_draft.Focus.Count == 0) Section("Work on this", [Nothing]);
        foreach (var focus in _draft.Focus)
        {
            Section($"Work on this, {(focus.Order == 1 ? "first" : "second")}: {Fault(focus.Fault)}", Why(focus));
            foreach (var stage in _draft.Stages.Where(s => s.Fault == focus.Fault)) Stage(stage);
        }

        if (_draft.Focus.Count > 0) Line(string.Create(CultureInfo.InvariantCulture, $"Look again after {_book.Dosage.LookAgainAfterDays} days, in whatever stage.\n"));
    }

    private string Nothing =>
        _draft.Trace.Any(t => t.Rule == "order:leave-it") ? "Nothing: flight and strike are where they are wanted. Leave it."
        : _draft.Parked.Any(p => p.Reason == ParkedReason.NoDrill) ? "Nothing at present: what would be worked on has no drill that fits body, place, kit and time."
        : "Nothing yet: what was read gives no piece of work. See what to measure next.";

    private IEnumerable<string> Why(DraftFocus focus)
    {
        yield return focus.Because;
        if (focus.After.Count > 0) yield return $"After: {Sentences.Listed([.. focus.After.Select(Fault)])}.";
    }

    private void Stage(DraftStage stage)
    {
        Line($"  {StageName(stage.Stage)}{Days(stage.Stage)}");
        foreach (var drill in stage.Drills)
            Line(string.Create(CultureInfo.InvariantCulture, $"    - {drill.Name}: {drill.Sets} x {drill.Reps}, {drill.MinutesPerSession} min, {Times(drill.SessionsPerWeek)} a week. \"{drill.Cue}\""));
        Line($"    Next stage when: {stage.Gate.Text}");
        _text.Append(stage.Stage == _draft.Stages.Last(s => s.Fault == stage.Fault).Stage ? "\n" : "");
    }

    private string Read(DraftFinding finding)
    {
        var measure = _book.Find(MeasureId.From(finding.Measure))!;
        var wanted = Signs.Wanted(measure, new Limits(finding.RangeLow, finding.RangeHigh)) ?? "no range for this club";
        var grade = finding.Side == Side.None ? Terms.Of(finding.Grade).Replace('-', ' ') : $"{Terms.Of(finding.Grade)}, {Terms.Of(finding.Side)}";
        return $"{measure.Name}: {Signs.Value(measure, finding.Value)} (+- {Sentences.Number(finding.StandardError)}), {wanted}: {grade}";
    }

    private IEnumerable<string> Cause(DraftCause cause)
    {
        yield return $"{Fault(cause.Root)}: {cause.Because}";
        foreach (var fault in cause.Explains) yield return $"  explains {Fault(fault)}";
    }

    private string Parked(DraftParked parked) => $"{Fault(parked.Fault)}: " + parked.Reason switch
    {
        ParkedReason.ExplainedBy => $"follows from {Fault(parked.By!.Value)}",
        ParkedReason.TrainAfter => $"waits until {Fault(parked.By!.Value)} is better",
        ParkedReason.LimitOfTwo => "one or two things at a time are enough",
        ParkedReason.NoHarmShown => "nothing read shows that it does harm",
        ParkedReason.TooSmall => "too small to work on by itself",
        ParkedReason.Borderline => "at the edge, within reading error",
        _ => "no drill fits at present: see a coach or, with a recorded limit, a licensed professional",
    };

    private static string Reason(DraftWithheld withheld) => withheld.Reason switch
    {
        WithheldReason.Limit => $"a recorded limit ({withheld.Detail})",
        WithheldReason.Kit => $"wants {withheld.Detail}",
        WithheldReason.Room => $"wants another place ({withheld.Detail})",
        WithheldReason.Level => $"for another level ({withheld.Detail})",
        WithheldReason.Age => $"age ({withheld.Detail})",
        WithheldReason.TriedInVain => $"tried before ({withheld.Detail})",
        WithheldReason.OppositeFault => $"could push {withheld.Detail} further out",
        _ => $"time ({withheld.Detail})",
    };

    private string Days(Stage stage) => _book.Dosage.Stages.FirstOrDefault(s => s.Stage == stage) switch
    {
        null => "",
        { } s when s.ShortestDays == s.LongestDays => string.Create(CultureInfo.InvariantCulture, $" (about {s.ShortestDays} days)"),
        { } s => string.Create(CultureInfo.InvariantCulture, $" ({s.ShortestDays} to {s.LongestDays} days)"),
    };

    private static string StageName(Stage stage) => stage switch
    {
        Domain.Plans.Stage.Rehearse => "Rehearse, slow and without a ball",
        Domain.Plans.Stage.Half => "Half swings",
        Domain.Plans.Stage.Full => "Full swings",
        Domain.Plans.Stage.Mix => "Mix clubs and targets",
        _ => "Play",
    };

    private static string Times(int sessions) => sessions switch { 1 => "once", 2 => "twice", _ => string.Create(CultureInfo.InvariantCulture, $"{sessions} times") };

    private string Fault(FaultId fault)
    {
        var value = _draft.Findings.FirstOrDefault(f => f.Measure == fault.Measure.Value)?.Value;
        return _book.Find(fault.Measure) is { } measure ? $"{measure.Name}, {Signs.Side(measure, fault.Side, value)}" : fault.ToString();
    }

    private string Name(string measure) => _book.Find(MeasureId.From(measure))?.Name ?? measure;

    private string DrillName(string drill) => _book.Find(DrillId.From(drill))?.Name ?? drill;

    private void Section(string title, IEnumerable<string> lines)
    {
        var all = lines.ToList();
        if (all.Count == 0) return;
        Line(title);
        foreach (var line in all) Line($"  {line}");
        Line("");
    }

    private void Line(string line) => _text.Append(line).Append('\n');
}
