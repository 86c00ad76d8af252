using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Writing;
using CoachOffice.Web.Shell;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>What can be named in a form, said in a coach's words, and the ids behind the words. An entry that only waits to be put into force can be named too.</summary>
internal sealed class PickWords
{
    private readonly Dictionary<PickKind, PickList> _lists;

    public PickWords(Domain.Plans.Rulebook book, IReadOnlyList<EntryEdit> waiting)
    {
        var measures = book.Measures.Select(m => (m.Id.Value, m.Name)).Concat(Named(waiting, EntryKind.Measure)).ToList();
        _lists = new()
        {
            [PickKind.Measure] = new(measures),
            [PickKind.Fault] = new(measures.SelectMany(m => new[] { ($"{m.Item1}.low", $"{m.Item2}, low"), ($"{m.Item1}.high", $"{m.Item2}, high"), ($"{m.Item1}.out", $"{m.Item2}, either side") })),
            [PickKind.Drill] = new(book.Drills.Select(d => (d.Id.Value, d.Name)).Concat(Named(waiting, EntryKind.Drill))),
            [PickKind.Pattern] = new(book.Patterns.Select(p => (p.Id.Value, p.Name)).Concat(Named(waiting, EntryKind.Pattern))),
            [PickKind.Caution] = new(book.Cautions.Where(c => c.Occasion == CautionOccasion.Drill).Select(c => (c.Id.Value, c.Text)).Concat(Named(waiting, EntryKind.Caution))),
            [PickKind.Load] = new(Loads()),
        };
    }

    /// <summary>Everything of a kind, as words, in the order of the book.</summary>
    public IReadOnlyList<string> All(PickKind kind) => _lists[kind].Words;

    /// <summary>The id behind words; the id itself is understood too, and what is unknown stays as typed.</summary>
    public string Id(PickKind kind, string words) => _lists[kind].IdOf(words);

    /// <summary>The words for an id; an unknown id as it is.</summary>
    public string Words(PickKind kind, string id) => _lists[kind].WordsOf(id);

    private static IEnumerable<(string, string)> Named(IReadOnlyList<EntryEdit> waiting, EntryKind kind) =>
        from edit in waiting
        where edit.Id.Kind == kind && edit.Deed == EntryDeed.Write
        select (edit.Id.Key, TypedEntry.Tree(kind, edit.Text!)?["name"].Text() is { Length: > 0 } name ? name : edit.Id.Key);

    private static IEnumerable<(string, string)> Loads() =>
    [
        ("normal-swing", "what every swing loads"),
        .. Terms.All<Region>().SelectMany(r => new[] { (r, PlainWords.Of(r)), ($"{r}^", $"{PlainWords.Of(r)}, more than a swing does") }),
    ];
}
