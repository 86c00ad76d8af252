using System.Globalization;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Lessons;

namespace CoachOffice.SeedDemo.Swings;

/// <summary>Fills a lesson's sheet as a coach types it.</summary>
internal static class Sheet
{
    private const int FaceMarks = 9;
    private const int RadarSwings = 6;
    private const double Ground = 90;

    /// <summary>How many swings one reads a measure from.</summary>
    public static int SwingsFor(Measure measure, int usual) =>
        measure.Id.Value.StartsWith("contact-", StringComparison.Ordinal) ? FaceMarks : measure.Outcome ? Math.Max(usual, RadarSwings) : usual;

    /// <summary>The whole sheet.</summary>
    /// <param name="swing">Whose.</param>
    /// <param name="usual">How many swings the coach films.</param>
    /// <param name="asRead">Leans are typed as a protractor shows them from the ground.</param>
    public static IReadOnlyList<MeasureEntry> Of(Swing swing, int usual, bool asRead) =>
        [.. swing.Read.Select(m => Entry(m, swing.Take(m, SwingsFor(m, usual)), asRead && ReadingEntry.TakesAsRead(m)))];

    /// <summary>One field of it.</summary>
    public static MeasureEntry Entry(Measure measure, IReadOnlyList<double> values, bool asRead = false) => new()
    {
        Measure = measure.Id.Value,
        Text = string.Join(' ', values.Select(v => Number(asRead ? v + Ground : v, measure))),
        AsRead = asRead,
        FrameRate = ReadingEntry.UsualOf(measure) == Instrument.Video ? "240" : "",
    };

    // As fine as one would write it down: no finer than the scatter makes sense.
    private static string Number(double value, Measure measure) =>
        value.ToString(measure.SwingError switch { >= 3 => "0", >= 0.5 => "0.0", _ => "0.00" }, CultureInfo.InvariantCulture);
}
