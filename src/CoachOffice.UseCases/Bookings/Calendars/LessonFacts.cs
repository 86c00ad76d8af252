using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings.Calendars;

/// <summary>A booking with everything a person reads about it.</summary>
/// <param name="Booking">With its seats.</param>
/// <param name="Offering">What it is.</param>
/// <param name="Place">Where.</param>
/// <param name="Bay">Name of the bay or room; empty when there is none.</param>
/// <param name="Coach">Name of the coach.</param>
public sealed record LessonFacts(Booking Booking, Offering Offering, Place Place, string Bay, string Coach)
{
    /// <summary>As a visitor finds it: place, bay, address.</summary>
    public string Where => string.Join(", ", new[] { Place.Name, Bay, Place.Address.ReplaceLineEndings(", ") }.Where(part => part.Length > 0));
}
