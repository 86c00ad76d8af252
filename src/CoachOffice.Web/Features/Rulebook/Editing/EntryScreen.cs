using System.Text.RegularExpressions;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>The editor of one entry as it is shown: the form or the text, and what is wrong beside it.</summary>
internal sealed partial record EntryScreen
{
    public required EntryKind Kind { get; init; }

    public required EntryDesk Desk { get; init; }

    public required PickWords Words { get; init; }

    /// <summary>Null where there is no form for it, or the entry says more than the form can hold.</summary>
    public EntrySheet? Sheet { get; init; }

    public EntryForm Form { get; init; } = new();

    public string Text { get; init; } = "";

    public bool AsText { get; init; }

    /// <summary>The kind has a form, though this entry may not fit it.</summary>
    public bool HasForm => EntrySheets.Of(Kind) is not null;

    /// <summary>What was found; null before anything was checked.</summary>
    public WorkCheck? Check { get; init; }

    /// <summary>It was not kept, so keeping it unfinished is offered.</summary>
    public bool WasRefused { get; init; }

    /// <summary>Which entry the text is, where it says so.</summary>
    public EntryId? Written { get; init; }

    public IReadOnlyList<EntryFault> Mine => Check is null ? [] : [.. Check.Faults.Where(f => f.Entry is not null && f.Entry == Entry)];

    /// <summary>Faults that the change brings elsewhere, worked cases included.</summary>
    public IReadOnlyList<EntryFault> Elsewhere => Check is null ? [] : [.. Check.Faults.Where(f => f.Entry is null || f.Entry != Entry)];

    /// <summary>What lies in a field, in none of them when null.</summary>
    public IEnumerable<EntryFault> At(SheetField? field) => Mine.Where(f => FieldOf(f) == field);

    /// <summary>What the change brings that the reader lets pass, at a field, at none of them when null.</summary>
    public IEnumerable<WorkAnomaly> NotesAt(SheetField? field) => Notes(isNew: true).Where(a => a.Concerns(Entry) && Sheet?.FieldAt(a.Anomaly.Field) == field);

    /// <summary>The same where it concerns other entries only.</summary>
    public IEnumerable<WorkAnomaly> NotesElsewhere => Notes(isNew: true).Where(a => !a.Concerns(Entry));

    /// <summary>What was so before the change.</summary>
    public IEnumerable<WorkAnomaly> NotesFromBefore => Notes(isNew: false).Where(a => a.Concerns(Entry));

    /// <summary>A fault as the form's reader knows the field and the things of the book.</summary>
    public string Say(EntryFault fault)
    {
        var message = new RuleSentence(Desk.Book).Of(fault.Message);
        return FieldOf(fault) is { } field && Missing().Match(message) is { Success: true } missing && field.Names.Contains(missing.Groups["name"].Value)
            ? $"\"{MeasureWords.Capital(field.Label)}\"{message[missing.Groups["rest"].Index..]}"
            : message;
    }

    private EntryId? Entry => Desk.Id ?? Written;

    private IEnumerable<WorkAnomaly> Notes(bool isNew) => (Check?.Anomalies ?? []).Where(a => a.IsNew == isNew);

    // What is missing is reported at the whole, and names what is missing.
    private SheetField? FieldOf(EntryFault fault)
    {
        var path = fault.Fault.Path;
        if (Missing().Match(fault.Fault.Message) is { Success: true } missing) path = path == Drafting.Reading.Fault.WholeFile ? missing.Groups["name"].Value : $"{path}.{missing.Groups["name"].Value}";
        return Sheet?.FieldAt(path);
    }

    [GeneratedRegex("^'(?<name>[a-z-]+)'(?<rest> (is missing|needs).*)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Missing();
}
