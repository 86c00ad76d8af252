using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>A student who waits for a place: for one booking that is full, or for any time of an offering within some days.</summary>
public sealed class WaitingPlace
{
    private WaitingPlace()
    {
    }

    public Guid Id { get; private set; }

    public StudentId StudentId { get; private set; }

    public OfferingId OfferingId { get; private set; }

    /// <summary>Only with this coach; null: any.</summary>
    public AccountId? CoachId { get; private set; }

    /// <summary>Only this booking; null: any time between the two days.</summary>
    public BookingId? BookingId { get; private set; }

    /// <summary>First day that would suit, in the practice's zone.</summary>
    public LocalDate FirstDay { get; private set; }

    /// <summary>Last day that would suit.</summary>
    public LocalDate LastDay { get; private set; }

    public WaitingStatus Status { get; private set; }

    public Instant JoinedAt { get; private set; }

    /// <summary>The seat that is kept for the student while it is offered; also the one taken in the end.</summary>
    public SeatId? OfferedSeat { get; private set; }

    /// <summary>Until when.</summary>
    public Instant? OfferedUntil { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>A new place at the end of the list.</summary>
    public static WaitingPlace Join(Guid id, StudentId student, WaitingWish wish, Instant now)
    {
        ArgumentNullException.ThrowIfNull(wish);
        return new WaitingPlace
        {
            Id = id,
            StudentId = student,
            OfferingId = wish.OfferingId,
            CoachId = wish.CoachId,
            BookingId = wish.BookingId,
            FirstDay = wish.FirstDay,
            LastDay = wish.LastDay,
            JoinedAt = now,
        };
    }

    /// <summary>A freed place is kept for the student.</summary>
    public void Offer(SeatId seat, Instant until) => (Status, OfferedSeat, OfferedUntil) = (WaitingStatus.Offered, seat, until);

    /// <summary>The student took it.</summary>
    public void Take() => (Status, OfferedUntil) = (WaitingStatus.Taken, null);

    /// <summary>The offer ran out; the next in line gets it.</summary>
    public void PassBy() => (Status, OfferedSeat, OfferedUntil) = (WaitingStatus.Passed, null, null);

    /// <summary>The student does not wait any more.</summary>
    public void Leave() => (Status, OfferedUntil) = (WaitingStatus.Left, null);
}
