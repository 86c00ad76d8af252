using System.Globalization;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps.ByTime;

/// <summary>Days in the reasons of messages.</summary>
internal static class MessageDay
{
    public static string Of(LocalDate day) => day.ToString("d MMMM uuuu", CultureInfo.InvariantCulture);
}
