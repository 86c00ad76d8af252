using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>A row of lessons by one rule.</summary>
/// <param name="First">The first lesson; its id, if any, is sent once.</param>
/// <param name="Rule">RFC 5545 RRULE value with COUNT or UNTIL, e.g. <c>FREQ=WEEKLY;COUNT=10</c>.</param>
/// <param name="SkipTaken">Leave out the times that are taken; else nothing is booked when one is.</param>
public sealed record SeriesForm(BookingForm First, string Rule, bool SkipTaken);
