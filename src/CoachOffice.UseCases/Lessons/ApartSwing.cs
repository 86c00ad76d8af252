using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Lessons;

/// <summary>A swing whose value stands apart from the others of the lesson. It counts all the same: a person decides.</summary>
/// <param name="Swing">Which, from 1.</param>
/// <param name="Value">In the measure's own unit.</param>
public sealed record ApartSwing(int Swing, Quantity Value)
{
    /// <summary>Those of one lesson by measure; only measures that have one.</summary>
    public static IReadOnlyDictionary<MeasureId, IReadOnlyList<ApartSwing>> Of(IEnumerable<(MeasureId Measure, SwingValue Read)> readings, Func<MeasureId, Measure> find)
    {
        ArgumentNullException.ThrowIfNull(readings);
        return readings.GroupBy(r => r.Measure, r => r.Read).Select(g => (g.Key, Apart: Of([.. g], find(g.Key)))).Where(a => a.Apart.Count > 0).ToDictionary(a => a.Key, a => a.Apart);
    }

    private static IReadOnlyList<ApartSwing> Of(IReadOnlyList<SwingValue> swings, Measure measure) =>
        [.. SwingsApart.Of([.. swings.Select(s => s.Value.In(measure.Unit).Value)], measure).Select(at => new ApartSwing(swings[at].Swing, swings[at].Value.In(measure.Unit)))];
}
