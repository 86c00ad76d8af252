namespace CoachOffice.Domain.Bookings;

/// <summary>What kind of thing holds a taken time.</summary>
public enum TimeHolderKind
{
    Coach,
    Resource,
    Student,
    Booking,
}
