using System.Globalization;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>
/// What a device needs to grade a field by itself while the office cannot be reached, as one attribute:
/// low edge, high edge, step, set-up error, swing error, how many of the measure's units one unit of the field is, and letters for what else holds.
/// The script that reads it is held against the office's own grading in the browser tests.
/// </summary>
internal static class RowBand
{
    /// <summary>The low edge is the student's own goal.</summary>
    private const string Goal = "g";

    /// <summary>Never further than borderline before the height is known.</summary>
    private const string Capped = "c";

    /// <summary>Needs fast video.</summary>
    private const string Fast = "f";

    /// <summary>The frame rate is part of its error: only the office grades it.</summary>
    private const string ByFrames = "t";

    public static string Of(SheetRow row)
    {
        var (held, measure) = (row.Field.Held, row.Measure);
        var own = new Quantity(1, row.Field.Unit).In(measure.Unit).Value;
        var letters = (held.FromGoal ? Goal : "") + (row.Field.NeedsHeight ? Capped : "") + (measure.NeedsFastVideo ? Fast : "") + (ErrsByFrames(measure) ? ByFrames : "");
        return string.Join('|', Text(held.Limits?.Low), Text(held.Limits?.High), Text(held.Step), Text(measure.SetupError), Text(measure.SwingError), Text(own), letters);
    }

    private static bool ErrsByFrames(Measure measure) =>
        measure.Instruments.Contains(Instrument.Video) && (measure.Unit == Unit.Second || measure.Derived is { Kind: DerivationKind.Ratio });

    private static string Text(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";
}
