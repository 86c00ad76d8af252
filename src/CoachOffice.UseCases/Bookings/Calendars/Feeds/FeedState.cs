using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars.Feeds;

/// <summary>Where a calendar address stands.</summary>
/// <param name="IssuedAt">Since when.</param>
/// <param name="LastOpenedAt">When a program last asked, to the hour; null: never yet.</param>
public sealed record FeedState(Instant IssuedAt, Instant? LastOpenedAt);
