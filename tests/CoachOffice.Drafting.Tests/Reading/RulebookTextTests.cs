using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests.Reading;

public sealed class RulebookTextTests : IDisposable
{
    private readonly DirectoryInfo _directory = Directory.CreateTempSubdirectory("rulebook-text");

    public void Dispose() => _directory.Delete(recursive: true);

    [Fact]
    public void A_bundle_gives_the_files_back()
    {
        var text = RulebookText.Of(SmallBook.Files.Append(KeyValuePair.Create("sub/é.yaml", "name: \"ü\t😀\"\n")));

        Assert.Equal(text.Files, RulebookText.Unbundle(text.Bundle()).Files);
    }

    [Fact]
    public void A_directory_is_read_with_its_folders_and_without_other_files()
    {
        Put("drills/a.yaml", "drills: []\n"u8);
        Put("rulebook.yaml", "name: A\n"u8);
        Put("notes.txt", "not a rule"u8);

        Assert.Equal(["drills/a.yaml", "rulebook.yaml"], RulebookText.FromDirectory(_directory.FullName).Value.Files.Keys);
    }

    [Fact]
    public void A_file_that_is_not_UTF8_is_refused_at_its_place()
    {
        Put("a.yaml", [.. "name: A\nnote: caf"u8, 0xE9]);

        var fault = Assert.Single(RulebookText.FromDirectory(_directory.FullName).Faults);

        Assert.Equal("a.yaml:2:10: file: byte 18 is not UTF-8; save the file as UTF-8", fault.ToString());
    }

    [Fact]
    public void A_byte_order_mark_is_no_part_of_the_text()
    {
        Put("a.yaml", [0xEF, 0xBB, 0xBF, .. "name: A\n"u8]);

        Assert.Equal("name: A\n", RulebookText.FromDirectory(_directory.FullName).Value.Files["a.yaml"]);
    }

    [Fact]
    public void A_file_of_ten_megabytes_is_refused_by_its_size()
    {
        Put("a.yaml", new byte[10_000_000]);

        var fault = Assert.Single(RulebookText.FromDirectory(_directory.FullName).Faults);

        Assert.Equal("a.yaml:1:1: file: the file has 10000000 bytes; at most 1048576 are read", fault.ToString());
    }

    [Fact]
    public void No_directory_and_no_file_are_faults()
    {
        Assert.Contains("there is no .yaml file of rules here", RulebookText.FromDirectory(_directory.FullName).Faults[0].Message, StringComparison.Ordinal);
        Assert.Contains("there is no such directory of rules", RulebookText.FromDirectory(Path.Combine(_directory.FullName, "nowhere")).Faults[0].Message, StringComparison.Ordinal);
    }

    private void Put(string path, ReadOnlySpan<byte> content)
    {
        var file = new FileInfo(Path.Combine(_directory.FullName, path));
        file.Directory!.Create();
        File.WriteAllBytes(file.FullName, content.ToArray());
    }
}
