using CoachOffice.Domain;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.Web.Shell.Wording;

/// <summary>Times of day as a time field sends them, or as typed where there is none.</summary>
internal static class TimeEntry
{
    private static readonly LocalTimePattern Written = LocalTimePattern.CreateWithInvariantCulture("HH:mm");
    private static readonly LocalTimePattern Typed = LocalTimePattern.CreateWithInvariantCulture("H:mm");

    public static string Text(LocalTime time) => Written.Format(time);

    public static LocalTime? Read(string? text)
    {
        var read = Typed.Parse(text?.Trim().Replace('.', ':') ?? "");
        return read.Success ? read.Value : null;
    }

    public static Refusal Refusal(string field) => new("time-not-known", "That is no time of day; write it like 09:30.", field);
}
