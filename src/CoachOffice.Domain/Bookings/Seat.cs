using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>One student's part in a booking, with the price agreed when it was booked.</summary>
public sealed class Seat
{
    private Seat()
    {
    }

    public SeatId Id { get; private set; }

    public BookingId BookingId { get; private set; }

    public StudentId StudentId { get; private set; }

    public SeatStatus Status { get; private set; }

    /// <summary>Until when it is kept for the student; null unless held.</summary>
    public Instant? HeldUntil { get; private set; }

    /// <summary>As agreed at booking, in the smallest unit of the practice's currency.</summary>
    public long PriceMinor { get; private set; }

    /// <summary>Rate of tax at booking, in hundredths of a percent.</summary>
    public int TaxBasisPoints { get; private set; }

    /// <summary>The package of which a credit is reserved or used; null when the lesson is charged.</summary>
    public PackageId? PackageId { get; private set; }

    public Instant BookedAt { get; private set; }

    /// <summary>When the student said "I am coming" to the lesson as it stands; null again when it moves.</summary>
    public Instant? ComingAt { get; private set; }

    /// <summary>When it was cancelled or lapsed, or attendance was marked.</summary>
    public Instant? EndedAt { get; private set; }

    /// <summary>True while the student is to come, or came.</summary>
    public bool Counts => Status is SeatStatus.Held or SeatStatus.Booked or SeatStatus.Attended or SeatStatus.NoShow;

    /// <summary>True while it may still be cancelled or moved.</summary>
    public bool IsOpen => Status is SeatStatus.Held or SeatStatus.Booked;

    /// <summary>A seat, held until a time or booked at once.</summary>
    internal static Seat For(SeatId id, BookingId booking, StudentId student, SeatTerms terms, Instant now) => new()
    {
        Id = id,
        BookingId = booking,
        StudentId = student,
        Status = terms.HeldUntil is null ? SeatStatus.Booked : SeatStatus.Held,
        HeldUntil = terms.HeldUntil,
        PriceMinor = terms.PriceMinor,
        TaxBasisPoints = terms.TaxBasisPoints,
        BookedAt = now,
    };

    /// <summary>Reserves a credit of a package, or gives it back.</summary>
    public void PayFrom(PackageId? package) => PackageId = package;

    /// <summary>The student says that they are coming.</summary>
    public void SayComing(Instant now)
    {
        if (Status == SeatStatus.Booked) ComingAt ??= now;
    }

    /// <summary>It is another time or place: whoever said yes said it to the old one.</summary>
    internal void AskAgain() => ComingAt = null;

    internal void Confirm() => (Status, HeldUntil) = (SeatStatus.Booked, null);

    internal void End(SeatStatus how, Instant now) => (Status, HeldUntil, EndedAt) = (how, null, now);

    internal void Reopen() => (Status, EndedAt) = (SeatStatus.Booked, null);
}
