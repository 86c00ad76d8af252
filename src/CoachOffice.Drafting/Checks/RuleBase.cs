using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Checks.Algebra;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Checks;

/// <summary>What every check of one book has on the table: the book, its compiled form, where its entries stand, and the spaces its conditions live in.</summary>
internal sealed class RuleBase(LoadedRulebook loaded, CompiledRulebook? compiled = null)
{
    private readonly Lazy<CompiledRulebook> _compiled = new(() => compiled ?? CompiledRulebook.Compile(loaded));
    private readonly Dictionary<(Club, int, Level), Space> _spaces = [];
    private readonly EntryPlaces _places = new(loaded.Text);

    public LoadedRulebook Loaded => loaded;

    public Rulebook Book => loaded.Book;

    public CompiledRulebook Compiled => _compiled.Value;

    /// <summary>Ages at which ranges differ: a grown-up's, and where an adjustment begins.</summary>
    public IReadOnlyList<int> Ages => [PlainLesson.GrownUp, .. Book.Adjustments.Select(a => a.FromAge).Where(a => a > PlainLesson.GrownUp).Distinct().Order()];

    /// <summary>The space of all readings with a club.</summary>
    public Space Of(Club club, int age = PlainLesson.GrownUp, Level level = Level.Improver)
    {
        if (!_spaces.TryGetValue((club, age, level), out var space)) _spaces.Add((club, age, level), space = new Space(Book, club, age, level));
        return space;
    }

    /// <summary>The draft of a lesson by this book.</summary>
    public Draft Draft(LessonFacts facts) => Drafter.Draft(Compiled, facts);

    /// <summary>A pattern as an anomaly's entry.</summary>
    public AnomalyEntry Place(Pattern pattern) => Place("patterns", pattern.Id.Value);

    public AnomalyEntry Place(string kind, string id) => _places.Of(kind, id);
}
