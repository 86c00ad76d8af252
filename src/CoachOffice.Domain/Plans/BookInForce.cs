using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>Which rulebook new drafts are made by: one row, adopted by compare-and-set on the previous hash.</summary>
public sealed class BookInForce
{
    private BookInForce()
    {
    }

    /// <summary>Always 1: there is one book in force.</summary>
    public int Id { get; private set; } = 1;

    public string Sha256 { get; private set; } = "";

    public Instant AdoptedAt { get; private set; }

    public string AdoptedBy { get; private set; } = "";

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>The first book of a practice.</summary>
    public static BookInForce First(string sha256, string by, Instant now)
    {
        var book = new BookInForce();
        book.Adopt(sha256, by, now);
        return book;
    }

    /// <summary>Takes another book into force.</summary>
    public void Adopt(string sha256, string by, Instant now) => (Sha256, AdoptedBy, AdoptedAt) = (sha256, by, now);
}
