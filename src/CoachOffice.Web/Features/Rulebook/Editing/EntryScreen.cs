using System.Text.RegularExpressions;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Rulebook;

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

    public IReadOnlyList<EntryFault> Mine => Check is null ? [] : [.. Check.Faults.Where(f => f.Entry is not null && f.Entry == (Desk.Id ?? Written))];

    /// <summary>Faults that the change brings elsewhere, worked cases included.</summary>
    public IReadOnlyList<EntryFault> Elsewhere => Check is null ? [] : [.. Check.Faults.Where(f => f.Entry is null || f.Entry != (Desk.Id ?? Written))];

    /// <summary>Faults of the entry that lie in no field.</summary>
    public IEnumerable<EntryFault> Loose => Mine.Where(f => Sheet is null || FieldOf(f) is null);

    public IEnumerable<EntryFault> At(SheetField field) => Mine.Where(f => FieldOf(f) == field);

    // What is missing is reported at the whole, and names what is missing.
    private SheetField? FieldOf(EntryFault fault)
    {
        var path = fault.Fault.Path;
        if (Missing().Match(fault.Fault.Message) is { Success: true } missing) path = path == Drafting.Reading.Fault.WholeFile ? missing.Groups["name"].Value : $"{path}.{missing.Groups["name"].Value}";
        return Sheet?.FieldAt(path);
    }

    [GeneratedRegex("^'(?<name>[a-z-]+)' (is missing|needs)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Missing();
}
