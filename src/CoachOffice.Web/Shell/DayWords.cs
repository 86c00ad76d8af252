using System.Globalization;
using NodaTime;

namespace CoachOffice.Web.Shell;

/// <summary>Days as a person reads them, and as a machine does.</summary>
internal static class DayWords
{
    /// <summary>Such as 4 Mar 2026.</summary>
    public static string Of(LocalDate day) => day.ToString("d MMM uuuu", CultureInfo.InvariantCulture);

    /// <summary>Such as Wednesday, 4 March.</summary>
    public static string Long(LocalDate day) => day.ToString("dddd, d MMMM", CultureInfo.InvariantCulture);

    /// <summary>Such as 2026-03-04.</summary>
    public static string Iso(LocalDate day) => day.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
}
