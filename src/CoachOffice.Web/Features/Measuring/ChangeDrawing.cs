using System.Globalization;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Measuring;

namespace CoachOffice.Web.Features.Measuring;

/// <summary>Where then, now, the wanted band and the zone of reading error lie on a line of 320 units.</summary>
internal sealed record ChangeDrawing
{
    private const double Width = 320;
    private const double Margin = 44;

    public required double Before { get; init; }

    public required double After { get; init; }

    public required double BandFrom { get; init; }

    public required double BandWidth { get; init; }

    /// <summary>Changes that stay within it could be reading error alone.</summary>
    public required double NoiseFrom { get; init; }

    public required double NoiseWidth { get; init; }

    public static ChangeDrawing Of(RetestView view, KeptVerdict verdict)
    {
        ArgumentNullException.ThrowIfNull(view);
        double[] shown = [verdict.Before - verdict.SmallestRealChange, verdict.Before + verdict.SmallestRealChange, verdict.After, view.Range.Low ?? verdict.After, view.Range.High ?? verdict.After];
        var (low, high) = (shown.Min(), shown.Max());
        var scale = (Width - 2 * Margin) / Math.Max(high - low, 1e-9);
        double At(double value) => Math.Clamp(Margin + (value - low) * scale, 0, Width);
        var from = view.Range.Low is { } l ? At(l) : 0;
        var to = view.Range.High is { } h ? At(h) : Width;
        return new()
        {
            Before = At(verdict.Before),
            After = At(verdict.After),
            BandFrom = from,
            BandWidth = Math.Max(1, to - from),
            NoiseFrom = At(verdict.Before - verdict.SmallestRealChange),
            NoiseWidth = Math.Max(1, 2 * verdict.SmallestRealChange * scale),
        };
    }

    /// <summary>Keeps a label on the drawing.</summary>
    public double TextAt(double place) => Math.Clamp(place, Margin, Width - Margin);

    public string N(double number) => Math.Round(number, 1).ToString(CultureInfo.InvariantCulture);
}
