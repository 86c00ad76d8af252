using CoachOffice.Drafting.Catalogue;

namespace CoachOffice.Drafting.Tests.Catalogue;

/// <summary>The page beside the shipped rules, and what stands on it.</summary>
public sealed class RulebookCatalogueTests
{
    private static readonly string Page = RulebookCatalogue.Write(HouseBook.Book);

    [Fact]
    public void The_page_beside_the_rules_is_the_one_they_give() =>
        Assert.True(File.ReadAllText(Path.Combine(HouseBook.Root, "rules", "README.md")) == Page, "Write it again: dotnet run --project src/CoachOffice.Cli -- catalogue");

    [Fact]
    public void Everything_of_the_book_stands_on_it()
    {
        Assert.All(HouseBook.Book.Patterns, p => Assert.Contains($"### {p.Name}\n\n`{p.Id.Value}`, {p.Precedence}, provisional\n\n> {p.Because}", Page, StringComparison.Ordinal));
        Assert.All(HouseBook.Book.Drills, d => Assert.Contains($"### {d.Name}\n\n`{d.Id.Value}`", Page, StringComparison.Ordinal));
        Assert.All(HouseBook.Book.Measures, m => Assert.Contains($"### {m.Name}\n\n`{m.Id.Value}`", Page, StringComparison.Ordinal));
        Assert.All(HouseBook.Book.Ranges, r => Assert.Contains(r.Card!, Page, StringComparison.Ordinal));
        Assert.All(HouseBook.Book.Cautions, c => Assert.Contains(c.Text, Page, StringComparison.Ordinal));
    }
}
