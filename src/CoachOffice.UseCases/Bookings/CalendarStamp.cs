using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Says whether some days of the calendar are still as they were read: equal stamps, equal days. Versions only rise, and bookings are never deleted.</summary>
/// <param name="Wish">Which days of whom.</param>
/// <param name="Today">The practice's day.</param>
/// <param name="Zone">The practice's zone.</param>
/// <param name="Saves">How often what stands in those days was saved.</param>
public sealed record CalendarStamp(CalendarWish Wish, LocalDate Today, string Zone, CalendarSaves Saves);
