using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Checks.Algebra;

/// <summary>All lessons with one club at one age and level, as a box of cells with a side for each measure. A derived measure counts as a side of its own, so a box said to be empty is empty; of one said to hold something only a drafted lesson is proof.</summary>
internal sealed class Space(Rulebook book, Club club, int age, Level level)
{
    private readonly CellSamples _samples = new(book, club, age, level);
    private readonly Dictionary<MeasureId, int> _places = book.Measures.Select((m, i) => (m.Id, i)).ToDictionary();
    private readonly MeasureCells?[] _cells = new MeasureCells?[book.Measures.Count];
    private readonly Lazy<ILookup<MeasureId, Condition>> _conditions = new(() => Leaves.Of(book).ToLookup(Leaves.MeasureOf));

    public Rulebook Book => book;

    public Club Club => club;

    public int Age => age;

    public Level Level => level;

    /// <summary>How many measures there are.</summary>
    public int Count => _cells.Length;

    /// <summary>The place of a measure among the sides of a box.</summary>
    public int PlaceOf(MeasureId measure) => _places[measure];

    /// <summary>The cells of a measure.</summary>
    public MeasureCells Of(MeasureId measure) => At(_places[measure]);

    /// <summary>The cells of the measure at a place.</summary>
    public MeasureCells At(int place) => _cells[place] ??= Cut(book.Measures[place]);

    private MeasureCells Cut(Measure measure)
    {
        var conditions = _conditions.Value[measure.Id].ToList();
        return new MeasureCells(club, _samples.Of(measure, conditions), conditions);
    }
}
