using CoachOffice.Domain.Plans;
using NodaTime;

namespace CoachOffice.Domain.Tests.Plans;

public sealed class BookInForceTests
{
    private static readonly RulebookEdition Shipped = new()
    {
        Number = 1,
        Sha256 = "00aa",
        ShippedSha256 = "00aa",
        Own = "",
        Kind = EditionKind.Shipped,
        AdoptedAt = Instant.FromUtc(2026, 5, 4, 10, 0),
        By = null,
        ByName = "the clock",
        Why = "",
        Changes = [],
    };

    [Fact]
    public void There_is_one_row_and_adopting_another_edition_changes_it()
    {
        var book = BookInForce.First(Shipped);
        Assert.Equal((1, 1, "00aa", "the clock", Shipped.AdoptedAt), (book.Id, book.Edition, book.Sha256, book.AdoptedBy, book.AdoptedAt));
        var later = Shipped.AdoptedAt + Duration.FromDays(1);
        book.Adopt(Shipped with { Number = 2, Sha256 = "00bb", Kind = EditionKind.Edit, ByName = "Ida Feld", AdoptedAt = later });
        Assert.Equal((1, 2, "00bb", "Ida Feld", later), (book.Id, book.Edition, book.Sha256, book.AdoptedBy, book.AdoptedAt));
    }
}
