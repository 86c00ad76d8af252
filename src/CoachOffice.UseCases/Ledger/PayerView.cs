using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Ledger.Packages;
using NodaTime;

namespace CoachOffice.UseCases.Ledger;

/// <summary>One payer's account on one page.</summary>
public sealed record PayerView
{
    public required Payer Payer { get; init; }

    public required LocalDate Today { get; init; }

    /// <summary>What is owed; below zero = money on account.</summary>
    public required Money Balance { get; init; }

    /// <summary>What of it should have been paid by now.</summary>
    public required Money Overdue { get; init; }

    public required int DaysOverdue { get; init; }

    /// <summary>For whom they pay.</summary>
    public required IReadOnlyList<(StudentId Id, string Name)> Students { get; init; }

    /// <summary>Packages with lessons left first.</summary>
    public required IReadOnlyList<PackageRow> Packages { get; init; }

    /// <summary>Newest first.</summary>
    public required IReadOnlyList<EntryRow> Entries { get; init; }

    /// <summary>True when older entries are not among them.</summary>
    public required bool HasMore { get; init; }

    /// <summary>Newest first.</summary>
    public required IReadOnlyList<DocumentRow> Documents { get; init; }

    /// <summary>Packages on sale.</summary>
    public required IReadOnlyList<PackageOffer> Offers { get; init; }
}

/// <summary>An entry as listed.</summary>
public sealed record EntryRow
{
    public required LedgerEntry Entry { get; init; }

    /// <summary>What happened.</summary>
    public required string Words { get; init; }

    /// <summary>What it did to what is owed; null where it did nothing, e.g. a lesson from a package.</summary>
    public Money? Amount { get; init; }

    /// <summary>For whom, where it names a student.</summary>
    public string StudentName { get; init; } = "";

    /// <summary>True when another entry took it back, or it is that entry.</summary>
    public bool IsUndone { get; init; }

    /// <summary>True when the owner may reverse it here.</summary>
    public bool MayReverse { get; init; }

    /// <summary>The receipt of a payment, when there is one.</summary>
    public DocumentId? Receipt { get; init; }
}

/// <summary>A receipt or statement as listed.</summary>
public sealed record DocumentRow(DocumentId Id, string Name, LocalDate IssuedOn, Money Total);
