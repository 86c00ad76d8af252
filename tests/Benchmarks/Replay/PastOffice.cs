using System.Globalization;
using System.Text;
using CoachOffice.Benchmarks.Drafting;
using CoachOffice.Benchmarks.Office;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Reading.Canonical;
using CoachOffice.UseCases.Rulebook;

namespace CoachOffice.Benchmarks.Replay;

/// <summary>A practice with a past: every student had twelve lessons, each kept with all its readings and the input of a draft. The lessons are some thousand different ones, over and over.</summary>
internal sealed class PastOffice : IAsyncDisposable
{
    private const int LessonsEach = 12;
    private const int Different = 2_000;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("coachoffice-past-");

    private PastOffice(int students)
    {
        Lessons = students * LessonsEach;
        Office = new OpenOffice(_folder.FullName);
    }

    /// <summary>So many, and the one they were copied from.</summary>
    public int Lessons { get; }

    public OpenOffice Office { get; }

    public CompiledRulebook Book { get; private set; } = null!;

    /// <summary>The lessons that differ from each other.</summary>
    public IReadOnlyList<LessonFacts> Facts { get; private set; } = [];

    public static async Task<PastOffice> Of(int students)
    {
        var past = new PastOffice(students);
        var first = new FirstPeople(past.Office);
        await first.Open();
        var served = await first.Serve("Hester", approve: false);
        past.Book = await past.Office.Do((Rulebooks books) => books.InForce());
        past.Facts = new SomeLessons(past.Book.Book, new Random(2026)).Take(Different);
        past.Fill(served, students);
        return past;
    }

    public async ValueTask DisposeAsync()
    {
        await Office.DisposeAsync();
        _folder.Delete(true);
    }

    private void Fill(Served served, int students)
    {
        using var rows = new BulkRows(Path.Combine(_folder.FullName, "office.db"));
        rows.Give("GivenLessons", ["K", "Club", "Json"], Facts.Select((f, k) => new object[] { k, Terms.Of(f.Club), Encoding.UTF8.GetString(CanonicalInput.Write(f)) }));
        rows.Give("GivenReadings", ["K", "N", "Measure", "Value"], Facts.SelectMany((f, k) => f.Readings.Select((r, n) => new object[] { k, n, r.Measure.Value, r.Value.Value })));
        var (whose, lesson) = (("StudentId", $"id(1, (i - 1) / {LessonsEach} + 1)"), ("LessonId", "id(2, i)"));
        rows.Copy("Students", Is("Id", served.Student.Value), students, ("Id", "id(1, i)"), ("GivenName", "given(i)"), ("FamilyName", "family(i)"), ("Email", "email(i)"), ("Phone", "phone(i)"), ("SearchText", "folded(i)"));
        rows.CopyWith(Joined("GivenLessons"), "Lessons", Is("Id", served.Lesson.Value), Lessons, ("Id", "id(2, i)"), whose, ("Club", "g.Club"));
        rows.CopyWith(Joined("GivenLessons"), "LessonInputs", Is("LessonId", served.Lesson.Value), Lessons, lesson, whose, ("Club", "g.Club"), ("Json", "g.Json"));
        rows.CopyWith(Joined("GivenReadings"), "Readings", Is("LessonId", served.Lesson.Value), Lessons, ("Id", "id(16 + g.N, i)"), lesson, ("Measure", "g.Measure"), ("Value", "g.Value"));
        rows.Keep();
    }

    private static string Joined(string given) => string.Create(CultureInfo.InvariantCulture, $"CROSS JOIN {given} g ON g.K = n.i % {Different}");

    private static string Is(string column, Guid id) => $"\"{column}\" = '{id.ToString().ToUpperInvariant()}'";
}
