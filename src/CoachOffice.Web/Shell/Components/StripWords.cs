using System.Globalization;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Web.Shell.Components;

/// <summary>What a range strip shows, in words.</summary>
internal static class StripWords
{
    public static string For(string name, double value, double error, string unit, Limits? wanted)
    {
        var give = error > 0 ? $", give or take {N(2 * error)}" : "";
        return $"{name}: {N(value)} {unit}{give}; {Band(wanted, unit)}{Where(value, wanted, unit)}.";
    }

    private static string Band(Limits? wanted, string unit) => wanted switch
    {
        { Low: { } low, High: { } high } => $"wanted {N(low)} to {N(high)} {unit}",
        { Low: { } low } => $"wanted {N(low)} {unit} or more",
        { High: { } high } => $"wanted {N(high)} {unit} or less",
        _ => "no wanted range",
    };

    private static string Where(double value, Limits? wanted, string unit)
    {
        if (wanted is not { Low: not null } and not { High: not null }) return "";
        if (value < wanted.Low) return $", {N(wanted.Low.Value - value)} {unit} below it";
        return value > wanted.High ? $", {N(value - wanted.High.Value)} {unit} above it" : ", inside it";
    }

    private static string N(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
