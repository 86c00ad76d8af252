using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Insight;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Plans.Private;

/// <summary>A measure over time as one would tell it: what it was, what it is, whether that is a change, and what is wanted. Nothing of grades, errors or trends.</summary>
internal static class PlainNumbers
{
    private const double Sure = 1.96;

    public static IEnumerable<string> Of(MeasureHistory history, UnitText units)
    {
        var (first, last, unit) = (history.Points[0], history.Points[^1], history.Measure.Unit);
        yield return history.Points.Count == 1
            ? $"On {DayWords.Of(last.On)} it was {units.Amount(last.Value, unit)}."
            : $"On {DayWords.Of(first.On)} it was {units.Amount(first.Value, unit)}, on {DayWords.Of(last.On)} {units.Amount(last.Value, unit)}. {Moved(first, last)}";
        if (history.Wanted is not { } wanted) yield break;
        yield return $"We want {units.Band(wanted.Low, wanted.High, unit)}: {(wanted.Contains(last.Value) ? "you are there." : "you are on the way.")}";
    }

    private static string Moved(HistoryPoint first, HistoryPoint last) =>
        Math.Abs(last.Value - first.Value) > Sure * Math.Sqrt((first.StandardError * first.StandardError) + (last.StandardError * last.StandardError))
            ? "That is a real change, more than a reading can be off."
            : "That is too little to call it a change yet: a reading can be off by as much.";
}
