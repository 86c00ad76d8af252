using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Lessons.Sheets;
using CoachOffice.UseCases.Measuring;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Students;

public abstract class EraseStudentTests(OfficeFixture fixture)
{
    // Each stands in a different place below; all begin alike so that one search finds them.
    private const string Trace = "zebulon";

    [Fact]
    public async Task Nothing_is_left_in_any_column_of_any_table_nor_in_the_mail_folder()
    {
        var office = fixture.Office;
        var student = await Everywhere(office);
        var letter = await Letter(office, student);
        Assert.True((await TextSearch.Everywhere(office, Trace)).Count >= 21, "The test lost sight of places where a person's words are kept.");

        await office.Must((EraseStudent erase) => erase.ForGood(student, office.Owner));

        Assert.Empty(await TextSearch.Everywhere(office, Trace));
        Assert.False(File.Exists(letter));
    }

    [Fact]
    public async Task Figures_and_states_stay_under_a_pseudonym()
    {
        var office = fixture.Office;
        var student = await Everywhere(office);

        await office.Must((EraseStudent erase) => erase.ForGood(student, office.Owner));

        var story = await office.Must((StudentPage page) => page.Of(student));
        Assert.StartsWith("Former student ", story.Student.FullName, StringComparison.Ordinal);
        Assert.Null(story.NextStep);
        Assert.Equal((null, null, 0), (story.Student.BirthDate, story.Student.Guardian, story.Student.Limits.Count));
        var plan = await office.Read(db => db.Plans.Include(p => p.Stages).SingleAsync(p => p.StudentId == student));
        Assert.Equal(PlanStatus.Revoked, plan.Status);
        Assert.Equal((2, 10), (plan.Stages.Count, plan.Stages[0].Drills[0].Reps));
        Assert.Equal(MessageState.Skipped, (await office.Read(db => db.Messages.SingleAsync(m => m.StudentId == student))).State);
        Assert.Equal(RetestStatus.Cancelled, (await office.Read(db => db.Retests.SingleAsync(r => r.StudentId == student))).Status);
        Assert.Equal(25, (await office.Read(db => db.CheckIns.SingleAsync(c => c.StudentId == student))).Minutes);
    }

    [Fact]
    public async Task An_erased_student_is_found_nowhere_and_cannot_be_changed_or_erased_again()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Named("Gone", "Forever"));
        await office.Must((EraseStudent erase) => erase.ForGood(student, office.Owner));

        Assert.Equal(0, (await office.Do((FindStudents find) => find.Matching("gone", 1, archived: true))).Total);
        Assert.Equal(0, (await office.Do((FindStudents find) => find.Matching("former", 1, archived: true))).Total);
        var again = await office.Refuses((EraseStudent erase) => erase.ForGood(student, office.Owner));
        var change = await office.Refuses((ChangeStudent c) => c.To(student, 2, AStudent.Named("Back", "Again"), office.Owner));
        Assert.All(again.Concat(change), r => Assert.Equal("student-not-found", r.Code));
    }

    [Fact]
    public async Task After_a_whole_loop_no_word_and_no_letter_is_left_and_every_page_still_answers()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true), Scene.Adult with { GivenName = "Quirina", FamilyName = "Tvaroz", Email = "q.tvaroz@example.org" });
        await scene.Sweep();
        await scene.CheckIn(scene.Practised() with { Comment = "Quirina did well" });
        var retest = (await scene.Looks())[0].Id;
        var letters = Path.Combine(scene.Office.Folder, "mail");
        Assert.NotEmpty(Directory.GetFiles(letters));

        await scene.Office.Must((EraseStudent erase) => erase.ForGood(scene.Student, scene.Office.Owner));

        Assert.Empty(Directory.GetFiles(letters));
        Assert.Empty(await TextSearch.Everywhere(scene.Office, "quirina", "tvaroz"));
        Assert.Null(await scene.Office.Do((DraftPage page) => page.Of(scene.Plan)));
        Assert.Null(await scene.Office.Do((PlanSheet sheet) => sheet.For(scene.Plan)));
        Assert.NotNull(await scene.Office.Do((PlanPage page) => page.Of(scene.Plan)));
        Assert.NotNull(await scene.Office.Do((LessonPage page) => page.Of(scene.Lesson, new SheetWish(scene.Office.Owner))));
        Assert.Null(await scene.Office.Do((RetestPage page) => page.Of(retest)));
        await scene.Office.Must((StudentPage page) => page.Of(scene.Student));
        await scene.Office.Do((TodayPage page) => page.For(scene.Office.Owner));
    }

    [Fact]
    public async Task A_coach_may_not_and_the_person_stays()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Named("Kept", "Whole"));

        var refusals = await office.Refuses((EraseStudent erase) => erase.ForGood(student, office.Coach));

        Assert.Equal(NotAllowed.Code, refusals.Single().Code);
        Assert.Equal("Kept Whole", (await office.Do((ReadStudent read) => read.Of(student)))!.FullName);
    }

    private static async Task<StudentId> Everywhere(TestOffice office)
    {
        var details = AStudent.Junior("Zebulon", "Zebulonson") with
        {
            Email = "zebulon@example.org",
            Phone = "zebulon-phone",
            Notes = "Zebulon likes short sessions.",
            Limits = [new StudentLimit { Region = Region.LowerBack, Status = LimitStatus.Current, NotedOn = new LocalDate(2026, 1, 2), Source = "Zebulon's mother" }],
        };
        var student = await office.Register(details);
        var plan = await office.GivePlan(student);
        await office.Change(db => PersonalTraces.Leave(db, plan, office.Now));
        return student;
    }

    private static async Task<string> Letter(TestOffice office, StudentId student)
    {
        var message = await office.Read(db => db.Messages.SingleAsync(m => m.StudentId == student));
        var folder = Directory.CreateDirectory(Path.Combine(office.Folder, "mail"));
        var path = Path.Combine(folder.FullName, $"{message.StableName}.eml");
        await File.WriteAllTextAsync(path, "To: zebulon@example.org");
        return path;
    }
}

public sealed class EraseStudentOnPostgreSql(PostgreSqlOffice office) : EraseStudentTests(office), IClassFixture<PostgreSqlOffice>;

public sealed class EraseStudentOnSqlite(SqliteOffice office) : EraseStudentTests(office), IClassFixture<SqliteOffice>
{
    [Fact]
    public async Task Not_even_the_bytes_of_the_file_hold_the_name()
    {
        var student = await office.Office.Register(AStudent.Named("Xanthippe", "Bytewise"));
        await office.Office.Must((EraseStudent erase) => erase.ForGood(student, office.Office.Owner));

        var file = new SqliteConnectionStringBuilder(office.Office.Database.ConnectionString).DataSource;
        foreach (var path in new[] { file, file + "-wal" }.Where(File.Exists))
        {
            await using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            var bytes = new byte[stream.Length];
            await stream.ReadExactlyAsync(bytes);
            Assert.Equal(-1, bytes.AsSpan().IndexOf("Xanthippe"u8));
            Assert.Equal(-1, bytes.AsSpan().IndexOf("xanthippe"u8));
        }
    }
}
