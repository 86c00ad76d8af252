using CoachOffice.UseCases.Bookings;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>The ways a booking ends, and back.</summary>
public sealed class BookingEnds(ReleaseSeat release, CancelBooking cancel, TakeBackCancel takeBack, CancelRest rest)
{
    internal ReleaseSeat Release => release;

    internal CancelBooking Cancel => cancel;

    internal CancelRest Rest => rest;

    internal TakeBackCancel TakeBack => takeBack;
}
