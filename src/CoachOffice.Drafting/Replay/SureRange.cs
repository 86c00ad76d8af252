using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Replay;

/// <summary>The values of a measure that are in range whoever the student is, of any age and stature.</summary>
/// <param name="Inside">In the measure's unit; null when nothing can be said beforehand, as with a student's own goal.</param>
internal sealed record SureRange(Limits? Inside)
{
    private const double AdultCentimetres = 175;

    // The statures a student may be recorded with, on a page or in a lesson's file.
    private const double ShortestCentimetres = 80;
    private const double TallestCentimetres = 230;

    /// <summary>Of one measure and club, or null when the book never grades it.</summary>
    public static SureRange? Of(Rulebook book, MeasureId id, Club club)
    {
        if (book.Find(id) is not { Step: not null } measure || book.RangeOf(id, club) is not { } range) return null;
        if (range.FromGoal) return new SureRange((Limits?)null);
        var adjustments = book.Adjustments.Where(a => a.Measure == id).ToList();
        var low = range.Limits.Low + adjustments.Sum(a => Math.Max(0, a.LowBy));
        var high = range.Limits.High + adjustments.Sum(a => Math.Min(0, a.HighBy));
        if (!measure.ScalesWithStature) return new SureRange(new Limits(low, high));
        return new SureRange(new Limits(Scaled(low, Math.Max), Scaled(high, Math.Min)));
    }

    private static double? Scaled(double? edge, Func<double, double, double> worse) =>
        edge is { } value ? worse(value * (ShortestCentimetres / AdultCentimetres), value * (TallestCentimetres / AdultCentimetres)) : null;
}
