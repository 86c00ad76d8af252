using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>Which rulebook new drafts are made by: one row, adopted by compare-and-set on its version.</summary>
public sealed class BookInForce
{
    private BookInForce()
    {
    }

    /// <summary>Always 1: there is one book in force.</summary>
    public int Id { get; private set; } = 1;

    /// <summary>The edition, by its number.</summary>
    public int Edition { get; private set; }

    public string Sha256 { get; private set; } = "";

    public Instant AdoptedAt { get; private set; }

    public string AdoptedBy { get; private set; } = "";

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>The first book of a practice.</summary>
    public static BookInForce First(RulebookEdition edition)
    {
        var book = new BookInForce();
        book.Adopt(edition);
        return book;
    }

    /// <summary>Takes another edition into force.</summary>
    public void Adopt(RulebookEdition edition)
    {
        ArgumentNullException.ThrowIfNull(edition);
        (Edition, Sha256, AdoptedBy, AdoptedAt) = (edition.Number, edition.Sha256, edition.ByName, edition.AdoptedAt);
    }
}
