using System.Text;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Reading.Own;
using CoachOffice.Drafting.Tests.Reading;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.Drafting.Tests.Writing;

public sealed class BookEntriesTests
{
    [Fact]
    public void The_shipped_book_written_entry_by_entry_reads_as_the_same_book() => Same(HouseBook.Compiled.Loaded);

    [Fact]
    public void A_book_with_every_key_of_the_schema_written_entry_by_entry_reads_as_the_same_book() =>
        Same(RulebookReader.Load(RulebookText.Of(SmallBook.Files)).Value);

    [Theory]
    [InlineData("12")]
    [InlineData("true")]
    [InlineData("null")]
    [InlineData("- a dash: and a colon # and a hash")]
    [InlineData("'quoted' \"twice\" \\ and {braced}, [bracketed]")]
    [InlineData("é, ü, 😀 and a long sentence that is folded over more than one line because it has far more than ninety letters: see")]
    [InlineData("two  spaces in a long sentence that is not folded because folding would eat one of the two spaces in it, would it not")]
    [InlineData("a line\nand another")]
    [InlineData("# a long sentence that begins like a comment and goes on and on until it has to be folded over a second line")]
    public void A_text_comes_back_letter_by_letter(string text)
    {
        var drill = SmallBook.Book.Drills[0] with { Name = text, Steps = [text, "Swing"], Cue = text, DoneWhen = new DoneWhen(8, 10, text) };
        var files = RulebookText.Of(SmallBook.Files).With([Own(EntryId.Of(drill.Id), EntryText.Of(drill))]);

        var read = RulebookReader.Read(files);

        Assert.Empty(read.Faults);
        Assert.Equivalent(drill, read.Value.Find(drill.Id), strict: true);
    }

    [Fact]
    public void One_entry_is_found_by_its_id_and_none_by_another()
    {
        var loaded = RulebookReader.Load(RulebookText.Of(SmallBook.Files)).Value;

        Assert.StartsWith("id: half-lean\n", BookEntries.Find(loaded, EntryId.Of(DrillId.From("half-lean"))), StringComparison.Ordinal);
        Assert.Null(BookEntries.Find(loaded, EntryId.Of(DrillId.From("no-such"))));
    }

    private static void Same(LoadedRulebook book)
    {
        var entries = BookEntries.Of(book);
        var files = entries.Select(e => Own(e.Key, e.Value));

        var read = RulebookReader.Load(RulebookText.Of(files.Select(f => KeyValuePair.Create(f.Key.Replace("own/", "", StringComparison.Ordinal), f.Value))));

        Assert.Empty(read.Faults);
        Assert.Equal(book.Sha256, read.Value.Sha256);
        Assert.Equal(entries, BookEntries.Of(read.Value));
        Assert.Equal(book.Cases.Count, read.Value.Cases.Count);
    }

    private static KeyValuePair<string, string> Own(EntryId id, string text) =>
        KeyValuePair.Create($"own/{Encoding.UTF8.GetByteCount(id.Key)}-{id.GetHashCode()}.yaml", OwnFile.Of(id.Kind, text));
}
