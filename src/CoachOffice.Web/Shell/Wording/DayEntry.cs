using CoachOffice.Domain;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.Web.Shell.Wording;

/// <summary>Days as a date field sends them.</summary>
internal static class DayEntry
{
    private static readonly LocalDate First = new(1990, 1, 1);
    private static readonly LocalDate Last = new(2200, 1, 1);

    public static string Text(LocalDate day) => LocalDatePattern.Iso.Format(day);

    /// <summary>"4 May 2026".</summary>
    public static string Said(LocalDate day) => day.ToString("d MMMM uuuu", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>"Mon 4 May".</summary>
    public static string Short(LocalDate day) => day.ToString("ddd d MMM", System.Globalization.CultureInfo.InvariantCulture);

    public static LocalDate? Read(string? text)
    {
        var read = LocalDatePattern.Iso.Parse(text?.Trim() ?? "");
        return read.Success && read.Value >= First && read.Value < Last ? read.Value : null;
    }

    public static Refusal Refusal(string field) => new("day-not-known", "That is no day we know; write it like 2026-05-04.", field);
}
