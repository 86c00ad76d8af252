using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings.Waiting;

/// <summary>Lessons the practice sets a time for and students join; all others are booked by who wants one, and nobody joins two who come together.</summary>
public static class SharedLessons
{
    /// <summary>True for groups and juniors with more than one seat.</summary>
    public static bool Are(Offering offering)
    {
        ArgumentNullException.ThrowIfNull(offering);
        return offering.Kind is OfferingKind.Group or OfferingKind.Junior && offering.Capacity > 1;
    }
}
