using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>The swings of one day with one club, added up while they pass by: what becomes one lesson.</summary>
internal sealed class GroupTally(LocalDate day, Club club, IReadOnlyList<RowMeasure> columns)
{
    private readonly double[] _sums = new double[columns.Count];
    private readonly int[] _counts = new int[columns.Count];

    public LocalDate Day => day;

    public Club Club => club;

    public int Swings { get; private set; }

    public void Add(double?[] values)
    {
        Swings++;
        for (var i = 0; i < values.Length; i++)
        {
            if (values[i] is not { } value) continue;
            _sums[i] += value;
            _counts[i]++;
        }
    }

    /// <summary>One value a measure, by id, as a lesson has them.</summary>
    public IReadOnlyList<MeasuredValue> Values() =>
        [.. columns.Index().Where(c => _counts[c.Index] > 0).OrderBy(c => c.Item.Measure.Id.Value, StringComparer.Ordinal).Select(c => new MeasuredValue
        {
            Measure = c.Item.Measure.Id,
            Value = new Quantity(_sums[c.Index] / _counts[c.Index], c.Item.Measure.Unit),
            Readings = _counts[c.Index],
            Instrument = Instrument.Radar,
        })];
}
