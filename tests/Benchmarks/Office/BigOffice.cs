using CoachOffice.Domain.Access;

namespace CoachOffice.Benchmarks.Office;

/// <summary>A practice of 20,000 students and 240,000 lessons in a data folder of its own. Two of its students were served by the operations; the others are copies of them.</summary>
internal sealed class BigOffice : IDisposable
{
    public const int Students = 20_000;
    public const int Lessons = Students * LessonsEach;
    public const int Plans = 2_000;
    public const int Drafts = 40;
    public const int ReadingsEach = 4;

    private const int LessonsEach = 12;

    /// <summary>Lessons lie over so many days that about a hundred are today.</summary>
    private const int Days = 2_190;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("coachoffice-big-");

    public string Folder => _folder.FullName;

    public string File => Path.Combine(Folder, "office.db");

    public Actor Owner { get; private set; } = Actor.Clock;

    /// <summary>Works on an approved plan.</summary>
    public Served Student { get; private set; } = null!;

    /// <summary>Has a draft nobody approved yet.</summary>
    public Served Drafted { get; private set; } = null!;

    public static async Task<BigOffice> Make()
    {
        var big = new BigOffice();
        await using (var office = new OpenOffice(big.Folder))
        {
            var first = new FirstPeople(office);
            await first.Open();
            (big.Student, big.Drafted, big.Owner) = (await first.Serve("Hester", approve: true), await first.Serve("Ivo", approve: false), first.Owner);
        }

        big.Fill();
        return big;
    }

    public void Dispose() => _folder.Delete(true);

    private void Fill()
    {
        using var rows = new BulkRows(File);
        var (student, lesson) = (Is("Id", Student.Student.Value), Is("Id", Student.Lesson.Value));
        rows.Copy("Students", student, Students, ("Id", "id(1, i)"), ("GivenName", "given(i)"), ("FamilyName", "family(i)"), ("Email", "email(i)"), ("Phone", "phone(i)"), ("SearchText", "folded(i)"));
        rows.Copy("Lessons", lesson, Lessons, ("Id", "id(2, i)"), ("StudentId", $"id(1, (i - 1) / {LessonsEach} + 1)"), ("HeldOn", $"date('now', '-' || (i * 37 % {Days}) || ' days')"));
        rows.Copy("LessonInputs", Is("LessonId", Student.Lesson.Value), Lessons, ("LessonId", "id(2, i)"), ("StudentId", $"id(1, (i - 1) / {LessonsEach} + 1)"));
        foreach (var (reading, kind) in rows.Texts($"SELECT Id FROM Readings WHERE {Is("LessonId", Student.Lesson.Value)} LIMIT {ReadingsEach}").Select((id, k) => (id, 0x30 + k)))
            rows.Copy("Readings", $"Id = '{reading}'", Lessons, ("Id", $"id({kind}, i)"), ("LessonId", "id(2, i)"));
        FillPlans(rows, Student, Plans, kinds: 0x100, firstStudent: 0);
        FillPlans(rows, Drafted, Drafts, kinds: 0x200, firstStudent: Plans);
        rows.Keep();
    }

    private static void FillPlans(BulkRows rows, Served served, int count, int kinds, int firstStudent)
    {
        var plan = Is("PlanId", served.Plan.Value);
        var (whose, lesson) = (("StudentId", $"id(1, i + {firstStudent})"), ("LessonId", $"id(2, (i + {firstStudent} - 1) * {LessonsEach} + 1)"));
        rows.Copy("StoredDrafts", Is("LessonId", served.Lesson.Value), count, ("Id", $"id({kinds}, i)"), whose, lesson);
        rows.Copy("Plans", Is("Id", served.Plan.Value), count, ("Id", $"id({kinds + 1}, i)"), ("DraftId", $"id({kinds}, i)"), whose, lesson);
        foreach (var (stage, kind) in rows.Texts($"SELECT Id FROM PlanStages WHERE {plan}").Select((id, k) => (id, kinds + 0x10 + k)))
        {
            rows.Copy("PlanStages", $"Id = '{stage}'", count, ("Id", $"id({kind}, i)"), ("PlanId", $"id({kinds + 1}, i)"));
            rows.Copy("Retests", $"StageId = '{stage}' AND {plan}", count, ("Id", $"id({kind + 0x40}, i)"), ("PlanId", $"id({kinds + 1}, i)"), ("StageId", $"id({kind}, i)"), whose, ("DueOn", "date('now', (i % 60 - 10) || ' days')"));
        }

        foreach (var (message, kind) in rows.Texts($"SELECT Id FROM Messages WHERE {plan}").Select((id, k) => (id, kinds + 0x80 + k)))
            rows.Copy("Messages", $"Id = '{message}'", count, ("Id", $"id({kind}, i)"), ("PlanId", $"id({kinds + 1}, i)"), whose, ("OnceKey", "t.\"OnceKey\" || i"), ("State", "'sent'"), ("SentAt", "t.\"DueAt\""));
    }

    private static string Is(string column, Guid id) => $"\"{column}\" = '{id.ToString().ToUpperInvariant()}'";
}
