using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Replay;

/// <summary>For which measure and club two books want another range, adjustments for age included.</summary>
internal static class RangeDifference
{
    public static HashSet<(MeasureId Measure, Club Club)> Of(Rulebook inForce, Rulebook edited)
    {
        var measures = inForce.Ranges.Concat(edited.Ranges).Select(r => r.Measure).Distinct();
        return [.. from measure in measures
                   from club in Enum.GetValues<Club>()
                   where Text(inForce, measure, club) != Text(edited, measure, club)
                   select (measure, club)];
    }

    /// <summary>The aim inside a range, its card and the sources are for reading only.</summary>
    private static string? Text(Rulebook book, MeasureId measure, Club club)
    {
        if (book.RangeOf(measure, club) is not { } range) return null;
        var adjustments = DefinitionText.OfAll(book.Adjustments.Where(a => a.Measure == measure), nameof(RangeAdjustment.Source));
        return $"{DefinitionText.Of(range, nameof(WantedRange.Source), nameof(WantedRange.Card), nameof(WantedRange.Aim))}\n{adjustments}";
    }
}
