using CoachOffice.Domain.Ledger;
using NodaTime;

namespace CoachOffice.Domain.Tests.Ledger;

/// <summary>A ledger of one payer in memory, and beside it what went in, counted without the ledger.</summary>
internal sealed class SomeLedger(TaxRule rule, Currency currency)
{
    private readonly FixedIds _ids = new();
    private readonly List<LedgerEntry> _entries = [];
    private readonly List<(PackageId Id, int Lessons, Money Tax, TaxRate Rate)> _packages = [];

    public IReadOnlyList<LedgerEntry> Entries => _entries;

    /// <summary>Prices of what was charged and sold, less what was taken back or given back.</summary>
    public long Priced { get; private set; }

    /// <summary>Money that came, less money that went.</summary>
    public long Handed { get; private set; }

    public long GivenUp { get; private set; }

    public long SumOn(LedgerAccount account) => _entries.Sum(e => e.SumOn(account));

    public long Balance => SumOn(LedgerAccount.Receivable);

    public IEnumerable<PackageCredits> Packages => _packages.Select(p => CreditsOf(p.Id, p.Lessons));

    public void Charge(IReadOnlyList<(long Price, int Rate)> lines)
    {
        Add(EntryKind.Charge, Movements.Charge(rule.Of([.. lines.Select(l => new TaxLine("x", Of(l.Price), new TaxRate(l.Rate)))])));
        Priced += lines.Sum(l => l.Price);
    }

    public void Sell(long price, int lessons, int rate)
    {
        var line = rule.Of(new TaxLine("Package", Of(price), new TaxRate(rate)));
        var id = PackageId.From(_ids.Next());
        _packages.Add((id, lessons, line.Tax, line.Rate));
        Add(EntryKind.PackageSale, Movements.Sale(line), id);
        Priced += price;
    }

    public void Use(int which)
    {
        if (Pick(which) is not { } p || CreditsOf(p.Id, p.Lessons) is not { Left: > 0 } credits) return;
        Add(EntryKind.CreditUse, Movements.Earned(credits.NextShare, p.Rate), p.Id);
    }

    public void End(int which)
    {
        if (Pick(which) is not { } p || CreditsOf(p.Id, p.Lessons).Prepaid is not { IsZero: false } rest) return;
        Add(EntryKind.PackageEnd, Movements.Earned(rest, p.Rate), p.Id);
    }

    public void Pay(long amount)
    {
        Add(EntryKind.Payment, Movements.Payment(Of(amount), PaymentMethod.Cash));
        Handed += amount;
    }

    public void Refund(long amount)
    {
        if (Math.Min(amount, -Balance) is not (> 0 and var most)) return;
        Add(EntryKind.Refund, Movements.Refund(Of(most), PaymentMethod.Transfer));
        Handed -= most;
    }

    public void WriteOff(long amount)
    {
        if (Math.Min(amount, Balance) is not (> 0 and var most)) return;
        Add(EntryKind.WriteOff, Movements.WriteOff(Of(most)));
        GivenUp += most;
    }

    /// <summary>Takes back any entry that may be: not a sale of which something was used, and none twice.</summary>
    public void Reverse(int which)
    {
        var open = _entries.Where(e => e.Kind is not EntryKind.Reversal and not EntryKind.PackageSale && _entries.TrueForAll(r => r.Reverses != e.Id)).ToList();
        if (open.Count == 0) return;
        var entry = open[which % open.Count];
        _entries.Add(entry.Reverse(Facts(), currency));
        Priced -= entry.Kind == EntryKind.Charge ? PriceOf(entry) : 0;
        Handed -= entry.Kind is EntryKind.Payment or EntryKind.Refund ? -entry.SumOn(LedgerAccount.Receivable) : 0;
        GivenUp -= entry.SumOn(LedgerAccount.WriteOff);
    }

    private long PriceOf(LedgerEntry charge) => rule.Mode == TaxMode.Inclusive ? charge.SumOn(LedgerAccount.Receivable) : -charge.SumOn(LedgerAccount.Revenue);

    private PackageCredits CreditsOf(PackageId id, int lessons)
    {
        var its = _entries.Where(e => e.PackageId == id).ToList();
        int Standing(EntryKind kind) => its.Count(e => e.Kind == kind && its.TrueForAll(r => r.Reverses != e.Id));
        return new(lessons, Standing(EntryKind.CreditUse), 0, Of(-its.Sum(e => e.SumOn(LedgerAccount.Prepaid))), Standing(EntryKind.PackageEnd) > 0);
    }

    private (PackageId Id, int Lessons, Money Tax, TaxRate Rate)? Pick(int which) => _packages.Count == 0 ? null : _packages[which % _packages.Count];

    private void Add(EntryKind kind, IReadOnlyList<Movement> movements, PackageId? package = null) =>
        _entries.Add(LedgerEntry.Write(kind, Facts() with { PackageId = package }, movements));

    private Money Of(long minor) => new(minor, currency);

    private EntryFacts Facts() => new()
    {
        Id = EntryId.From(_ids.Next()),
        At = Instant.FromUtc(2026, 3, 2, 9, 0),
        On = new LocalDate(2026, 3, 2),
        PayerId = PayerId.From(FixedIds.Of(1_000_000)),
        By = "Dora Desk",
    };
}
