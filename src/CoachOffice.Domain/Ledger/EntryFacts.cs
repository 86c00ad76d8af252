using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Ledger;

/// <summary>What is known about an entry beside its amounts.</summary>
public sealed record EntryFacts
{
    /// <summary>Made when a form is shown, so that a form posted twice is one entry.</summary>
    public required EntryId Id { get; init; }

    public required Instant At { get; init; }

    /// <summary>The day it belongs to in the practice's zone.</summary>
    public required LocalDate On { get; init; }

    public required PayerId PayerId { get; init; }

    public StudentId? StudentId { get; init; }

    public OfferingId? OfferingId { get; init; }

    public AccountId? CoachId { get; init; }

    public SeatId? SeatId { get; init; }

    public PackageId? PackageId { get; init; }

    public PaymentMethod? Method { get; init; }

    /// <summary>Number on the terminal's slip or of the transfer; never of a card.</summary>
    public string Reference { get; init; } = "";

    /// <summary>What it was for, as on receipts. Never a name: the ledger outlives the person.</summary>
    public string Text { get; init; } = "";

    /// <summary>Who wrote it.</summary>
    public required string By { get; init; }
}
