using CoachOffice.Domain;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Refusals several operations on bookings give.</summary>
internal static class BookingRefusals
{
    /// <summary>Code of a time that is taken, whoever found it out.</summary>
    public const string TakenCode = "time-taken";

    public static Refusal NotFound { get; } = new("booking-not-found", "There is no such booking.");

    public static Refusal SeatNotFound { get; } = new("seat-not-found", "This student has no place in that booking.");

    public static Refusal NoOffering { get; } = new("offering-unknown", "Pick what is booked from the list; it may have been taken out of it meanwhile.", nameof(BookingForm.OfferingId));

    public static Refusal Over { get; } = new("booking-over", "This booking is cancelled; book anew.");

    public static Refusal Taken { get; } = new(TakenCode, "Somebody booked that time a moment ago. Pick another time.", nameof(BookingForm.Start));

    public static Refusal Marked { get; } = new("booking-marked", "Who came is marked already. Take the mark back first, then change the booking.");
}
