using System.Security.Cryptography;
using System.Text;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Reading.Lessons;

namespace CoachOffice.Drafting.Tests.Golden;

/// <summary>
/// The drafts of whole lessons, byte for byte, by a rulebook kept beside them (the shipped one may change any day).
/// A draft that comes out differently means the engine changed: raise its number and renew the table with COACHOFFICE_RENEW_GOLDEN=1.
/// </summary>
public sealed class GoldenTests
{
    private static readonly string Folder = Path.Combine(HouseBook.Root, "tests", "CoachOffice.Drafting.Tests", "Golden");
    internal static readonly Lazy<CompiledRulebook> Kept = new(() => CompiledRulebook.Compile(RulebookReader.Load(RulebookText.Unbundle(File.ReadAllText(At("book.json")))).Value));

    private static bool Renews => Environment.GetEnvironmentVariable("COACHOFFICE_RENEW_GOLDEN") == "1";

    public static TheoryData<string> Names => [.. GoldenTable.Why.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_draft_is_the_one_that_was_kept(string name) => Compare($"expected/{name}.json", DraftOf(name));

    [Theory]
    [MemberData(nameof(Names))]
    public void So_is_its_text_for_a_person(string name) => Compare($"expected/{name}.txt", DraftText.Write(DraftJson.Read(DraftOf(name)), Kept.Value.Book));

    [Fact]
    public void No_draft_changes_without_a_new_engine_number()
    {
        var sum = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Concat(GoldenTable.Why.Keys.Select(DraftOf)))));
        var pinned = File.ReadAllText(At("engine.txt")).Split(' ', StringSplitOptions.TrimEntries);
        if (Renews && pinned[0] != Drafter.Engine) File.WriteAllText(At("engine.txt"), $"{Drafter.Engine} {sum}\n");
        else Assert.Equal((pinned[0], pinned[1]), (Drafter.Engine, sum));
    }

    [Fact]
    public void Every_kept_lesson_says_why_it_is_kept() =>
        Assert.Equal(GoldenTable.Why.Keys, Directory.EnumerateFiles(At("lessons")).Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal));

    private static void Compare(string file, string actual)
    {
        var expected = At(file);
        if (Renews) File.WriteAllText(expected, actual);
        Assert.True(File.Exists(expected), $"Nothing is kept as {file}.");
        FirstDifference.MustBeNone(File.ReadAllText(expected), actual);
    }

    private static string DraftOf(string name) => DraftJson.Text(Drafter.Draft(Kept.Value, LessonReader.FromFile(At($"lessons/{name}.json"), Kept.Value.Book).Value));

    internal static string At(string path) => Path.Combine(Folder, path);
}
