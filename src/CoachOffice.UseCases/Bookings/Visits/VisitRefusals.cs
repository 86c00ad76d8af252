using CoachOffice.Domain;

namespace CoachOffice.UseCases.Bookings.Visits;

internal static class VisitRefusals
{
    public static Refusal NotFound { get; } = new("lesson-not-found", "There is no such lesson.");

    public static Refusal Gone { get; } = new("time-gone", "Somebody took that time a moment ago. Nothing was booked: pick another time.");

    public static Refusal HoldOver { get; } = new("hold-over", "The time was kept for you until a moment ago and is free again. Pick a time once more.");

    public static Refusal Begun { get; } = new("lesson-begun", "The lesson has begun. Ask the practice.");

    /// <summary>What the office's own operations refuse, as a student is told it: nothing that only staff can do anything about.</summary>
    public static Refusal Told(IReadOnlyList<Refusal> refusals) => refusals[0].Code switch
    {
        "booking-full" => new("booking-full", "The last place was taken a moment ago. You can wait for one to become free."),
        "student-archived" or "student-unknown" => new("not-here", "You cannot book here any more. Ask the practice."),
        BookingRefusals.TakenCode when refusals[0].Field == nameof(BookingForm.Students) => new(BookingRefusals.TakenCode, "You have another lesson then. Pick another time."),
        _ => Gone,
    };

    public static Refusal Changed { get; } = new("terms-changed", "What this costs changed after you opened the page: the notice ended meanwhile. Nothing was done. Read what it costs now, then decide.");

    public static Refusal CannotMove { get; } = new("cannot-move", "This lesson cannot be moved here. Cancel it and pick another, or ask the practice.");
}
