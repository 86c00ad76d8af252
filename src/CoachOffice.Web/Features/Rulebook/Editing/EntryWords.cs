using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Writing;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>Entries and what becomes of them, said to a person.</summary>
internal static class EntryWords
{
    public static string Of(EntryKind kind) => kind switch
    {
        EntryKind.Range => "Ranges",
        EntryKind.Adjustment => "Adjustment by age",
        EntryKind.TrainAfter => "Order of work",
        EntryKind.Goal => "Measures of a goal",
        EntryKind.Dosage => "Amounts of practice",
        EntryKind.Progression => "Ladder",
        EntryKind.Case => "Worked case",
        EntryKind.Name => "The book's name",
        _ => MeasureWords.Sentence(Terms.Of(kind)),
    };

    /// <summary>E.g. "Drill: Head against the shade".</summary>
    /// <param name="id">The entry.</param>
    /// <param name="book">The book in force.</param>
    /// <param name="text">Its text, which names an entry the book does not hold yet or no longer.</param>
    public static string Of(EntryId id, Domain.Plans.Rulebook book, string? text = null) =>
        id.Kind is EntryKind.Dosage or EntryKind.Name ? Of(id.Kind) : $"{Of(id.Kind)}: {NameOf(id, book, text)}";

    /// <summary>What became of entries, one phrase each; worked cases of one pattern together, as its name would be said again for each.</summary>
    public static IReadOnlyList<string> Of(IEnumerable<EntryChange> changes, Domain.Plans.Rulebook book) =>
        [.. changes.GroupBy(c => c.Id.Kind == EntryKind.Case ? $"{c.Change} {c.Id.Key.Split(": ", 2)[0]}" : $"{c.Id}").Select(g => g.ToList() is [var only] ? $"{Of(only.Id, book)} {Of(only.Change)}"
            : $"{g.Count()} worked cases of {NameOf(new EntryId(EntryKind.Pattern, g.First().Id.Key.Split(": ", 2)[0]), book)} {Of(g.First().Change)}")];

    public static string NameOf(EntryId id, Domain.Plans.Rulebook book, string? text = null) => InBook(id, book) ?? InText(id.Kind, text) ?? id.Kind switch
    {
        EntryKind.Case when id.Key.Split(": ", 2) is [var pattern, var name] => $"{NameOf(new EntryId(EntryKind.Pattern, pattern), book)}, {name}",
        EntryKind.Drill or EntryKind.Pattern or EntryKind.Progression or EntryKind.Caution => MeasureWords.Sentence(id.Key),
        _ => MeasureWords.Capital(new RuleSentence(book).Of(id.Key)),
    };

    private static string? InBook(EntryId id, Domain.Plans.Rulebook book) => id.Kind switch
    {
        EntryKind.Measure or EntryKind.Range => MeasureWords.NameOf(MeasureId.From(id.Key), book),
        EntryKind.Drill => book.Find(DrillId.From(id.Key))?.Name,
        EntryKind.Pattern => book.Find(PatternId.From(id.Key))?.Name,
        EntryKind.Progression => book.Progressions.FirstOrDefault(p => p.Id.Value == id.Key)?.Name,
        _ => null,
    };

    private static string? InText(EntryKind kind, string? text) =>
        kind is EntryKind.Drill or EntryKind.Pattern or EntryKind.Progression && text is not null && TypedEntry.Tree(kind, text)?["name"].Text() is { Length: > 0 } name ? name : null;

    public static string Of(ChangeKind change) => change switch { ChangeKind.Added => "new", ChangeKind.Removed => "removed", _ => "changed" };

    public static string Of(EntryDeed deed) => deed switch { EntryDeed.Write => "changed", EntryDeed.Remove => "to be removed", _ => "back to what the program brings" };

    public static string Of(EditionKind kind) => kind switch
    {
        EditionKind.Shipped => "came with the program",
        EditionKind.Edit => "changed here",
        EditionKind.WentBack => "went back",
        _ => "brought from a file",
    };
}
