using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests.Reading;

/// <summary>A book of which most files were read before says what it says when all are read.</summary>
public sealed class FilesReadTests
{
    private static readonly RulebookText Shipped = HouseBook.Compiled.Loaded.Text;

    [Fact]
    public void Files_read_before_say_the_same_and_changed_ones_what_they_say_now()
    {
        var read = new FilesRead();
        Assert.Equal(HouseBook.Compiled.Sha256, RulebookReader.Load(Shipped, read).Value.Sha256);
        Assert.Equal(HouseBook.Compiled.Sha256, RulebookReader.Load(Shipped, read).Value.Sha256);
        var other = Shipped.With([KeyValuePair.Create("rulebook.yaml", "name: Another name\n")]);

        var again = RulebookReader.Load(other, read).Value;

        Assert.Equal("Another name", again.Book.Name);
        Assert.Equal(RulebookReader.Load(other).Value.Sha256, again.Sha256);
        Assert.Equal(HouseBook.Compiled.Sha256, RulebookReader.Load(Shipped, read).Value.Sha256);
    }

    [Fact]
    public void Faults_are_told_each_time()
    {
        var read = new FilesRead();
        var broken = Shipped.With([KeyValuePair.Create("rulebook.yaml", "name: One\nname: Two\n"), KeyValuePair.Create("own/changes.yaml", "drill: []\n")]);
        var first = RulebookReader.Load(broken, read).Faults;

        Assert.Equal(2, first.Count);
        Assert.Equal(first, RulebookReader.Load(broken, read).Faults);
        Assert.Equal(RulebookReader.Load(broken).Faults, first);
    }
}
