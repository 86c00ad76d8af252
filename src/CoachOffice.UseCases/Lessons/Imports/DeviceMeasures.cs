using CoachOffice.Domain.Measuring;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Which measures a device's file can hold.</summary>
public static class DeviceMeasures
{
    private static readonly MeasureId[] SeenSideways = [NamedMeasures.ClubPath, NamedMeasures.FaceToPath, NamedMeasures.StartDirection];

    /// <summary>Those a radar reads. What follows from others, such as ball speed over club speed, is left to follow.</summary>
    public static IReadOnlyList<Measure> Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return [.. book.Measures.Where(m => m.Instruments.Contains(Instrument.Radar) && m.Derived is null).OrderBy(m => m.Row)];
    }

    /// <summary>True for directions a device may give as right and left of the target.</summary>
    public static bool IsSideways(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return SeenSideways.Contains(measure.Id);
    }

    /// <summary>Units a column of this measure can be in; the measure's own first.</summary>
    public static IReadOnlyList<Unit> UnitsOf(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return [measure.Unit, .. Unit.All.Where(u => u != measure.Unit && u.Dimension == measure.Unit.Dimension)];
    }
}
