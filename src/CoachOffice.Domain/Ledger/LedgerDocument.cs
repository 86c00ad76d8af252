using NodaTime;

namespace CoachOffice.Domain.Ledger;

/// <summary>A receipt or statement as it was handed out, numbered without gaps. Insert-only, also by the database, and kept when the person is erased: tax law asks for it (GDPR article 17(3)(b)).</summary>
public sealed record LedgerDocument
{
    public required DocumentId Id { get; init; }

    public required DocumentKind Kind { get; init; }

    public required int Year { get; init; }

    /// <summary>From 1 in each kind and year.</summary>
    public required int Number { get; init; }

    public required PayerId PayerId { get; init; }

    /// <summary>The payment of a receipt; null for a statement.</summary>
    public EntryId? EntryId { get; init; }

    public required LocalDate IssuedOn { get; init; }

    public required Instant At { get; init; }

    public required string By { get; init; }

    /// <summary>What was paid, or the balance at the end; in the smallest unit of the currency named in the content.</summary>
    public required long TotalMinor { get; init; }

    /// <summary>Everything that is printed.</summary>
    public required DocumentContent Content { get; init; }

    /// <summary>As printed: <c>R 2026-0001</c>.</summary>
    public string Name => NameOf(Kind, Year, Number);

    /// <summary>As printed.</summary>
    public static string NameOf(DocumentKind kind, int year, int number) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{(kind == DocumentKind.Receipt ? 'R' : 'S')}\u00A0{year}-{number:0000}");
}
