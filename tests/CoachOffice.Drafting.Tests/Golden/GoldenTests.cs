using System.Security.Cryptography;
using System.Text;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Reading.Lessons;

namespace CoachOffice.Drafting.Tests.Golden;

/// <summary>
/// The drafts of whole lessons, byte for byte, by a rulebook kept beside them (the shipped one may change any day).
/// A draft that comes out differently means the engine changed: raise its number and renew the table with COACHOFFICE_RENEW_GOLDEN=1.
/// With COACHOFFICE_RENEW_GOLDEN=book the shipped rulebook is kept first. Whoever renews reads what changed, as an instructor would.
/// </summary>
public sealed class GoldenTests
{
    private static readonly string Folder = Path.Combine(HouseBook.Root, "tests", "CoachOffice.Drafting.Tests", "Golden");
    internal static readonly Lazy<CompiledRulebook> Kept = new(() => CompiledRulebook.Compile(RulebookReader.Load(RulebookText.Unbundle(Bundle())).Value));

    private static string? Renewal => Environment.GetEnvironmentVariable("COACHOFFICE_RENEW_GOLDEN");

    private static bool Renews => Renewal is "1" or "book";

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
        var drafts = Sum(GoldenTable.Why.Keys.Select(DraftOf));
        var asked = Sum(GoldenTable.Why.Keys.Select(name => File.ReadAllText(At($"lessons/{name}.json"))).Prepend(Bundle()));
        var pinned = File.ReadAllText(At("engine.txt")).Split(' ', StringSplitOptions.TrimEntries);
        if (Renews && (pinned[0], pinned[2]) != (Drafter.Engine, asked)) File.WriteAllText(At("engine.txt"), $"{Drafter.Engine} {drafts} {asked}\n");
        else Assert.Equal((pinned[0], pinned[1], pinned[2]), (Drafter.Engine, drafts, asked));
    }

    [Fact]
    public void Every_kept_lesson_says_why_it_is_kept() =>
        Assert.Equal(GoldenTable.Why.Keys, Directory.EnumerateFiles(At("lessons")).Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal));

    private static string Sum(IEnumerable<string> texts) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Concat(texts))));

    private static string Bundle()
    {
        if (Renewal == "book") File.WriteAllText(At("book.json"), RulebookText.Of(HouseBook.Compiled.Loaded.Text.Files.Where(f => !f.Key.StartsWith("cases/", StringComparison.Ordinal))).Bundle());
        return File.ReadAllText(At("book.json"));
    }

    private static void Compare(string file, string actual)
    {
        var expected = At(file);
        if (Renews) File.WriteAllText(expected, actual);
        Assert.True(File.Exists(expected), $"Nothing is kept as {file}.");
        FirstDifference.MustBeNone(File.ReadAllText(expected), actual);
    }

    private static string DraftOf(string name) => DraftJson.Text(Drafter.Draft(Kept.Value, LessonReader.FromFile(At($"lessons/{name}.json"), Kept.Value.Book).Value));

    /// <summary>A lesson of the table, read by the shipped rulebook.</summary>
    internal static LessonFacts Lesson(string name) => LessonReader.FromFile(At($"lessons/{name}.json"), HouseBook.Book).Value;

    internal static string At(string path) => Path.Combine(Folder, path);
}
