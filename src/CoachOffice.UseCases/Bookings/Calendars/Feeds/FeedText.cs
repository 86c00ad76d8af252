namespace CoachOffice.UseCases.Bookings.Calendars.Feeds;

/// <summary>A calendar as it is answered.</summary>
/// <param name="Text">The VCALENDAR.</param>
/// <param name="Tag">Of what it says, whenever it is written: the same lessons give the same tag.</param>
public sealed record FeedText(string Text, string Tag);
