using CoachOffice.Domain.Measuring;

namespace CoachOffice.Web.Shell.Components;

/// <summary>Where things lie on a range strip of 200 units: the wanted band, the value and two reading errors all fit, with room at both ends.</summary>
internal sealed class StripScale
{
    public const double Width = 200;
    private const double Room = 0.12;
    private readonly double _from;
    private readonly double _perUnit;

    public StripScale(Limits? wanted, double value, double error)
    {
        var low = Math.Min(value - 2 * error, wanted?.Low ?? double.PositiveInfinity);
        var high = Math.Max(value + 2 * error, wanted?.High ?? double.NegativeInfinity);
        low = Math.Min(low, wanted?.High ?? low);
        high = Math.Max(high, wanted?.Low ?? high);
        var span = high > low ? high - low : Math.Max(1, Math.Abs(value) * Room);
        _from = low - span * Room;
        _perUnit = Width / (span * (1 + 2 * Room));
    }

    /// <summary>The place of a number, never off the strip.</summary>
    public double Of(double number) => Math.Round(Math.Clamp((number - _from) * _perUnit, 0, Width), 2);

    /// <summary>The place of a band's low edge; an open end runs to the strip's end.</summary>
    public double LowOf(Limits band) => band.Low is { } low ? Of(low) : 0;

    /// <summary>The place of a band's high edge.</summary>
    public double HighOf(Limits band) => band.High is { } high ? Of(high) : Width;
}
