using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>
/// Somebody's or something's time taken by a booking: the coach's (buffer included), the bay's, each student's. Half-open. The database refuses two
/// rows of one holder that overlap, whoever forgets to ask; rows go when the booking is cancelled or lapses.
/// </summary>
public sealed class TakenTime
{
    /// <summary>The longest a booking can be, buffer included: how far back a search has to look for what is still going on.</summary>
    public static readonly Duration Longest = Duration.FromHours(16);

    private TakenTime()
    {
    }

    public Guid Id { get; private set; }

    public BookingId BookingId { get; private set; }

    /// <summary>Id of the coach, the bay or the student.</summary>
    public Guid Holder { get; private set; }

    public Instant From { get; private set; }

    public Instant Until { get; private set; }

    /// <summary>The same time, held by another: two records of one student became one.</summary>
    public TakenTime By(TimeHolder holder)
    {
        ArgumentNullException.ThrowIfNull(holder);
        return new TakenTime { Id = Id, BookingId = BookingId, Holder = holder.Id, From = From, Until = Until };
    }

    /// <summary>The time of one holder.</summary>
    public static TakenTime Of(Guid id, Booking booking, TimeHolder holder)
    {
        ArgumentNullException.ThrowIfNull(booking);
        ArgumentNullException.ThrowIfNull(holder);
        return new TakenTime { Id = id, BookingId = booking.Id, Holder = holder.Id, From = booking.Starts, Until = holder.Kind == TimeHolderKind.Coach ? booking.BusyUntil : booking.Ends };
    }
}
