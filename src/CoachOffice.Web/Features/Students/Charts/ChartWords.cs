using System.Globalization;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Insight;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Students.Charts;

/// <summary>What a chart says, in words.</summary>
internal static class ChartWords
{
    // A month of four weeks.
    private const int Days = 28;

    /// <summary>The text in place of the drawing.</summary>
    public static string Alternative(MeasureHistory history, UnitText units)
    {
        var (first, last) = (history.Points[0], history.Points[^1]);
        var unit = history.Measure.Unit;
        var values = history.Points.Count == 1
            ? $"{units.Amount(last.Value, unit)} on {DayWords.Of(last.On)}"
            : $"{units.Amount(first.Value, unit)} on {DayWords.Of(first.On)}, {units.Amount(last.Value, unit)} on {DayWords.Of(last.On)}, {history.Points.Count} values in all";
        return $"{history.Measure.Name}, {Domain.Terms.Of(history.Club)}: {values}; {Wanted(history, units)}.";
    }

    public static string Wanted(MeasureHistory history, UnitText units) =>
        history.Wanted is { } wanted ? $"wanted {units.Band(wanted.Low, wanted.High, history.Measure.Unit)}" : "no range for this club";

    /// <summary>The trend with its chance; null when there are too few values.</summary>
    public static string? Trend(MeasureHistory history, UnitText units)
    {
        if (history.Trend is not { } trend) return null;
        var step = trend.SlopePerDay * Days;
        var way = step > 0 ? "up" : "down";
        var size = units.Amount(Math.Abs(step), history.Measure.Unit);
        var line = step == 0 ? "The line through all values is level" : $"The line through all values goes {way} by {size} in four weeks";
        return $"{line}. {Sure(trend)}";
    }

    /// <summary>What a re-test showed, as one sign above its mark.</summary>
    public static string Sign(Movement movement) => movement switch
    {
        Movement.MovedToward => "+",
        Movement.MovedAway => "−",
        Movement.MovedThrough => "»",
        Movement.NoChangeBeyondReadingError => "=",
        _ => "?",
    };

    /// <summary>What the signs mean.</summary>
    public const string Signs = "Above a re-test: + moved toward the range, − away from it, » through it, = no change beyond reading error, ? cannot tell yet.";

    public static string Of(LessonKind kind) => kind == LessonKind.Retest ? "re-test" : "lesson";

    /// <summary>The value with two standard errors.</summary>
    public static string Value(HistoryPoint point, Measure measure, UnitText units) =>
        $"{units.Amount(point.Value, measure.Unit)} ± {units.Number(2 * point.StandardError, measure.Unit)}";

    private static string Sure(Trend trend) => trend.Chance switch
    {
        < 0.05 => $"If nothing moved, {trend.Days} values would hardly fall into such an order (chance {Chance(trend)}).",
        _ => $"{trend.Days} values may fall into such an order by chance alone ({Chance(trend)}), so they prove no trend.",
    };

    private static string Chance(Trend trend) =>
        trend.Chance < 0.001 ? "below 0.1 %" : (trend.Chance * 100).ToString(trend.Chance < 0.1 ? "0.0" : "0", CultureInfo.InvariantCulture) + " %";
}
