using CoachOffice.Domain.Plans;
using NodaTime;

namespace CoachOffice.Domain.Tests.Plans;

public sealed class BookInForceTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 5, 4, 10, 0);

    [Fact]
    public void There_is_one_row_and_adopting_another_book_changes_it()
    {
        var book = BookInForce.First("00aa", "the clock", Now);
        Assert.Equal((1, "00aa", "the clock", Now), (book.Id, book.Sha256, book.AdoptedBy, book.AdoptedAt));
        book.Adopt("00bb", "Ida Feld", Now + Duration.FromDays(1));
        Assert.Equal((1, "00bb", "Ida Feld", Now + Duration.FromDays(1)), (book.Id, book.Sha256, book.AdoptedBy, book.AdoptedAt));
    }
}
