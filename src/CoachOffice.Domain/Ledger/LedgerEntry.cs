using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Ledger;

/// <summary>One thing that happened to money, with postings that sum to nothing. Insert-only, also by the database: what was wrong is reversed by another entry.</summary>
public sealed class LedgerEntry
{
    private readonly List<LedgerPosting> _postings = [];

    private LedgerEntry()
    {
    }

    public EntryId Id { get; private set; }

    public Instant At { get; private set; }

    /// <summary>The day it belongs to in the practice's zone.</summary>
    public LocalDate On { get; private set; }

    public EntryKind Kind { get; private set; }

    public PayerId PayerId { get; private set; }

    public StudentId? StudentId { get; private set; }

    public OfferingId? OfferingId { get; private set; }

    /// <summary>Who earned it.</summary>
    public AccountId? CoachId { get; private set; }

    public SeatId? SeatId { get; private set; }

    public PackageId? PackageId { get; private set; }

    /// <summary>The entry this one takes back; each is taken back once at most.</summary>
    public EntryId? Reverses { get; private set; }

    public PaymentMethod? Method { get; private set; }

    /// <summary>Number on the terminal's slip or of the transfer; never of a card.</summary>
    public string Reference { get; private set; } = "";

    /// <summary>What it was for, as on receipts. Never a name: the ledger outlives the person.</summary>
    public string Text { get; private set; } = "";

    /// <summary>Who wrote it.</summary>
    public string By { get; private set; } = "";

    public IReadOnlyList<LedgerPosting> Postings => _postings;

    /// <summary>A new entry. Movements that do not sum to nothing are a defect and throw.</summary>
    public static LedgerEntry Write(EntryKind kind, EntryFacts facts, IReadOnlyList<Movement> movements)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(movements);
        if (movements.Count < 2 || !Money.Sum(movements.Select(m => m.Amount), movements[0].Amount.Currency).IsZero)
            throw new InvalidOperationException("The two sides of an entry are alike.");
        if (CardNumbers.LooksLikeOne(facts.Reference) || CardNumbers.LooksLikeOne(facts.Text)) throw new InvalidOperationException("No entry holds a card's number.");
        var entry = new LedgerEntry { Kind = kind };
        entry.Take(facts);
        entry._postings.AddRange(movements.Select((movement, place) => LedgerPosting.Of(facts.Id, place + 1, movement)));
        return entry;
    }

    /// <summary>The entry that takes this one back, by the same names the other way.</summary>
    public LedgerEntry Reverse(EntryFacts facts, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (Kind == EntryKind.Reversal) throw new InvalidOperationException("A reversal is not reversed: write the entry again.");
        var same = facts with { PayerId = PayerId, StudentId = StudentId, OfferingId = OfferingId, CoachId = CoachId, SeatId = SeatId, PackageId = PackageId, Method = Method };
        var reversal = Write(EntryKind.Reversal, same, Movements.Reversed(Postings, currency));
        reversal.Reverses = Id;
        return reversal;
    }

    /// <summary>Sum of its postings on one account, in smallest units.</summary>
    public long SumOn(LedgerAccount account) => _postings.Where(p => p.Account == account).Sum(p => p.AmountMinor);

    private void Take(EntryFacts facts)
    {
        (Id, At, On, PayerId, By) = (facts.Id, facts.At, facts.On, facts.PayerId, facts.By);
        (StudentId, OfferingId, CoachId, SeatId, PackageId) = (facts.StudentId, facts.OfferingId, facts.CoachId, facts.SeatId, facts.PackageId);
        (Method, Reference, Text) = (facts.Method, facts.Reference.Trim(), facts.Text.Trim());
    }
}
