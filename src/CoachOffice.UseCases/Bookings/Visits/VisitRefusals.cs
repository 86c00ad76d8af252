using CoachOffice.Domain;

namespace CoachOffice.UseCases.Bookings.Visits;

internal static class VisitRefusals
{
    public static Refusal NotFound { get; } = new("lesson-not-found", "There is no such lesson.");

    public static Refusal Gone { get; } = new("time-gone", "Somebody took that time a moment ago. Nothing was booked: pick another time.");

    public static Refusal HoldOver { get; } = new("hold-over", "The time was kept for you until a moment ago and is free again. Pick a time once more.");

    public static Refusal Begun { get; } = new("lesson-begun", "The lesson has begun. Ask the practice.");

    public static Refusal Changed { get; } = new("terms-changed", "What this costs changed after you opened the page: the notice ended meanwhile. Nothing was done. Read what it costs now, then decide.");

    public static Refusal CannotMove { get; } = new("cannot-move", "This lesson cannot be moved here. Cancel it and pick another, or ask the practice.");
}
