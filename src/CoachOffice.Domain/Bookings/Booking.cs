using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>A lesson in the calendar: one coach, a place, perhaps a bay, one or more students. Its time is half-open: one may begin where another ends.</summary>
public sealed class Booking
{
    private readonly List<Seat> _seats = [];

    private Booking()
    {
    }

    public BookingId Id { get; private set; }

    public OfferingId OfferingId { get; private set; }

    public AccountId CoachId { get; private set; }

    public PlaceId PlaceId { get; private set; }

    public ResourceId? ResourceId { get; private set; }

    /// <summary>The series it belongs to, or null.</summary>
    public SeriesId? SeriesId { get; private set; }

    /// <summary>Where its series put it at first, also after it was moved (RFC 5545 RECURRENCE-ID).</summary>
    public LocalDateTime? SeriesStart { get; private set; }

    /// <summary>Wall clock at the place: what was agreed.</summary>
    public LocalDateTime LocalStart { get; private set; }

    /// <summary>IANA zone id.</summary>
    public string Zone { get; private set; } = "";

    public int Minutes { get; private set; }

    public int BufferMinutes { get; private set; }

    /// <summary>Derived from the local time and the zone.</summary>
    public Instant Starts { get; private set; }

    /// <summary>Exclusive.</summary>
    public Instant Ends { get; private set; }

    /// <summary>End of the coach's time, exclusive.</summary>
    public Instant BusyUntil { get; private set; }

    public int Capacity { get; private set; }

    public BookingStatus Status { get; private set; }

    /// <summary>Until when it is kept free; null unless held.</summary>
    public Instant? HeldUntil { get; private set; }

    /// <summary>Revision of the invitation (RFC 5545 SEQUENCE): raised when time, place or state change.</summary>
    public int Sequence { get; private set; }

    /// <summary>For the office.</summary>
    public string Note { get; private set; } = "";

    public Instant CreatedAt { get; private set; }

    public Instant? CancelledAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>All seats, ended ones too.</summary>
    public IReadOnlyList<Seat> Seats => _seats;

    public BookedTime Time => new(LocalStart, Zone, Minutes, BufferMinutes);

    public BookingWhere Where => new(CoachId, PlaceId, ResourceId);

    /// <summary>True while it takes time in the calendar.</summary>
    public bool IsOn => Status is BookingStatus.Held or BookingStatus.Confirmed;

    /// <summary>Seats nobody has.</summary>
    public int FreeSeats => IsOn ? Math.Max(0, Capacity - _seats.Count(s => s.Counts)) : 0;

    /// <summary>A new booking without students yet.</summary>
    public static Booking Of(BookingId id, Offering offering, BookedTime time, BookingWhere where, Instant now)
    {
        ArgumentNullException.ThrowIfNull(offering);
        var booking = new Booking { Id = id, OfferingId = offering.Id, Capacity = offering.Capacity, Status = BookingStatus.Confirmed, CreatedAt = now };
        booking.Put(time, where);
        return booking;
    }

    /// <summary>It is one of a series, at this place of its rule.</summary>
    public void BelongTo(SeriesId series, LocalDateTime start) => (SeriesId, SeriesStart) = (series, start);

    /// <summary>Gives a student a seat; a booking whose first seat is held is held itself.</summary>
    public Seat Seat(SeatId id, StudentId student, SeatTerms terms, Instant now)
    {
        ArgumentNullException.ThrowIfNull(terms);
        if (terms.HeldUntil is { } until && !_seats.Exists(s => s.Counts)) (Status, HeldUntil) = (BookingStatus.Held, until);
        var seat = Bookings.Seat.For(id, Id, student, terms, now);
        _seats.Add(seat);
        return seat;
    }

    /// <summary>Another time, coach, place or bay: the invitation's revision is raised.</summary>
    public void MoveTo(BookedTime time, BookingWhere where)
    {
        Put(time, where);
        Sequence++;
        foreach (var seat in _seats) seat.AskAgain();
    }

    /// <summary>Which of several bays it is does not matter to who comes, so the invitation stays as it was.</summary>
    public void UseBay(ResourceId bay) => ResourceId = bay;

    /// <summary>What was held is booked.</summary>
    public void Confirm(SeatId seat)
    {
        Find(seat).Confirm();
        (Status, HeldUntil) = (BookingStatus.Confirmed, null);
    }

    /// <summary>One student will not come. Without anybody left it is cancelled, or has lapsed; a group takes place until somebody cancels it.</summary>
    public void Release(SeatId seat, SeatStatus how, Instant now)
    {
        Find(seat).End(how, now);
        if (_seats.Exists(s => s.Counts)) return;
        if (how == SeatStatus.Lapsed && Status == BookingStatus.Held) (Status, HeldUntil) = (BookingStatus.Lapsed, null);
        else if (Capacity <= 2) Cancel(now);
    }

    /// <summary>Marks whether a student came, or takes the mark back.</summary>
    public void Mark(SeatId seat, SeatStatus how, Instant now)
    {
        if (how == SeatStatus.Booked) Find(seat).Reopen();
        else Find(seat).End(how, now);
    }

    /// <summary>It does not take place. Seats are released before, by what the terms say.</summary>
    public void Cancel(Instant now)
    {
        if (!IsOn) return;
        (Status, HeldUntil, CancelledAt) = (BookingStatus.Cancelled, null, now);
        Sequence++;
    }

    /// <summary>It takes place after all, with the seats that are named.</summary>
    public void TakeBack(IReadOnlyCollection<SeatId> seats)
    {
        ArgumentNullException.ThrowIfNull(seats);
        (Status, CancelledAt) = (BookingStatus.Confirmed, null);
        foreach (var seat in _seats.Where(s => seats.Contains(s.Id))) seat.Reopen();
        Sequence++;
    }

    public void Write(string note)
    {
        ArgumentNullException.ThrowIfNull(note);
        Note = note.Trim();
    }

    private Seat Find(SeatId seat) => _seats.Find(s => s.Id == seat) ?? throw new InvalidOperationException("That seat is of another booking.");

    private void Put(BookedTime time, BookingWhere where)
    {
        ArgumentNullException.ThrowIfNull(time);
        ArgumentNullException.ThrowIfNull(where);
        (LocalStart, Zone, Minutes, BufferMinutes) = (time.LocalStart, time.Zone, time.Minutes, time.BufferMinutes);
        (Starts, Ends, BusyUntil) = (time.Starts, time.Ends, time.BusyUntil);
        (CoachId, PlaceId, ResourceId) = (where.CoachId, where.PlaceId, where.ResourceId);
    }
}
