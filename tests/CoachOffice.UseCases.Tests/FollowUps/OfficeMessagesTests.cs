using CoachOffice.Data;
using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.UseCases.Tests.FollowUps;

/// <summary>Messages without a plan, carried by a family of letters of the test's own in place of the shipped ones.</summary>
public abstract class OfficeMessagesTests(OfficeFixture fixture)
{
    private static readonly Guid Subject = new("00000000-0000-0000-0000-00000000ab01");
    private readonly PostCards _cards = new();

    [Fact]
    public async Task It_goes_through_the_same_outbox_and_is_sent_once()
    {
        var office = await Office();
        await Write(office, await Alma(office));

        Assert.Equal(1, (await Sweep(office)).Sent);
        Assert.Equal(SweepResult.Nothing, await Sweep(office));

        Assert.Equal(["alma.reed@example.org"], _cards.Written);
        Assert.Single(Directory.GetFiles(Path.Combine(office.Folder, "mail")));
        Assert.Equal(MessageState.Sent, (await Only(office)).State);
    }

    [Fact]
    public async Task Every_kind_without_a_plan_has_one_family_of_letters() =>
        Assert.Empty(await fixture.Office.Do((OfficeLetters letters) => Task.FromResult(Enum.GetValues<MessageKind>().Except(LettersTests.OfPlans).Where(k => letters.Of(k) is null).ToList())));

    [Fact]
    public async Task The_same_cause_twice_is_one_message_and_another_student_or_subject_another()
    {
        var office = await Office();
        var student = await Alma(office);
        await Write(office, student);
        await Write(office, student);
        await Write(office, student, subject: new Guid("00000000-0000-0000-0000-00000000ab02"));
        await Write(office, null);
        await Write(office, null);

        Assert.Equal(3, await office.Read(db => db.Messages.CountAsync()));
    }

    [Fact]
    public async Task A_message_without_plan_and_subject_is_a_fault_of_the_program() =>
        await Assert.ThrowsAsync<InvalidOperationException>(async () => await Write(await Office(), null, subject: null));

    [Fact]
    public async Task Stopping_reminders_does_not_stop_it_but_night_holds_back_what_can_wait()
    {
        var office = await Office();
        var student = await Alma(office);
        await office.Change(async db => (await db.Students.SingleAsync(s => s.Id == student)).Stop(MessagePurpose.Encouragement, office.Now));
        office.Time.Advance(TimeSpan.FromHours(13));
        await Write(office, student, atOnce: true);
        await Write(office, student, subject: new Guid("00000000-0000-0000-0000-00000000ab02"));

        Assert.Equal(new SweepResult(1, 1, 0, 0, 0), await Sweep(office));

        Assert.Equal(Instant.FromUtc(2026, 3, 3, 9, 0), await office.Read(db => db.Messages.Where(m => m.State == MessageState.Waiting).Select(m => m.DueAt).SingleAsync()));
    }

    [Fact]
    public async Task A_minors_goes_to_the_guardian_and_a_missing_address_asks_a_person()
    {
        var office = await Office();
        await Write(office, await office.Register(AStudent.Junior("Kit", "Marsh")));
        await Write(office, await office.Register(AStudent.Named("No", "Mail") with { Email = "" }));

        var swept = await Sweep(office);

        Assert.Equal((1, 1), (swept.Sent, swept.NeedAttention));
        Assert.Equal(["mara.marsh@example.org"], _cards.Written);
        Assert.Equal("no-address", await office.Read(db => db.Messages.Where(m => m.State == MessageState.NeedsAttention).Select(m => m.LastProblem).SingleAsync()));
    }

    [Fact]
    public async Task Nothing_goes_to_who_is_archived_and_an_erased_students_is_taken_back()
    {
        var office = await Office();
        var (archived, erased) = (await Alma(office), await office.Register(AStudent.Named("Era", "Sed")));
        await Write(office, archived);
        await Write(office, erased);
        await office.Must((ArchiveStudent archive) => archive.Now(archived, office.Desk));
        await office.Must((EraseStudent erase) => erase.ForGood(erased, office.Owner));

        Assert.Equal(SweepResult.Nothing, await Sweep(office));

        var kept = await office.Read(db => db.Messages.AsNoTracking().SingleAsync(m => m.StudentId == erased));
        Assert.Equal((MessageState.Skipped, ""), (kept.State, kept.Reason));
    }

    [Fact]
    public async Task The_family_may_say_never_or_later_and_who_reads_it()
    {
        var office = await Office();
        _cards.Verdict = new SendingVerdict.Later(office.Now + Duration.FromHours(2));
        await Write(office, null);
        Assert.Equal(1, (await Sweep(office)).PutOff);
        office.Time.Advance(TimeSpan.FromHours(2));
        _cards.Verdict = new SendingVerdict.Go();
        _cards.To = new MailRecipient("The Reed family", "reeds@example.org", false);

        Assert.Equal(1, (await Sweep(office)).Sent);

        Assert.Equal(["reeds@example.org"], _cards.Written);
        var list = await office.Must((ListMessages messages) => messages.Now(MessageFilter.Sent, 1, office.Desk));
        Assert.Equal((null, null, "The Reed family"), (list.Rows.Single().StudentId, list.Rows.Single().PlanId, list.Rows.Single().Name));
        _cards.Verdict = new SendingVerdict.Never("over");
        await Write(office, null, subject: new Guid("00000000-0000-0000-0000-00000000ab02"));
        Assert.Equal(1, (await Sweep(office)).Skipped);
    }

    [Theory]
    [InlineData(true, 1, 0)]
    [InlineData(false, 0, 1)]
    public async Task After_a_crash_in_the_middle_it_is_repeated_or_a_person_is_asked_as_its_family_says(bool mayRepeat, int sent, int asked)
    {
        var office = await Office();
        _cards.MayRepeat = mayRepeat;
        await Write(office, await Alma(office));
        await office.Change(db => db.Messages.ExecuteUpdateAsync(m => m.SetProperty(x => x.SendingAt, office.Now).SetProperty(x => x.ClaimedBy, "a process that died").SetProperty(x => x.LeaseUntil, office.Now)));
        office.Time.Advance(TimeSpan.FromSeconds(1));

        var swept = await Sweep(office);

        Assert.Equal((sent, asked), (swept.Sent, swept.NeedAttention));
        if (mayRepeat) return;
        var stuck = Assert.Single((await office.Do((TodayPage page) => page.For(office.Coach))).Messages);
        Assert.Equal("Alma Reed", stuck.Name);
        await office.Must((SendMessageNow send) => send.Now(stuck.Id, office.Coach));
        Assert.Equal(1, (await Sweep(office)).Sent);
    }

    [Fact]
    public async Task A_kind_nobody_writes_any_more_asks_a_person()
    {
        var office = await fixture.Another(opened: true, services => services.AddScoped(_ => new OfficeLetters([])));
        await Write(office, null);

        Assert.Equal(1, (await Sweep(office)).NeedAttention);

        Assert.Equal("no-letter", (await Only(office)).LastProblem);
        Assert.Equal("", (await office.Do((TodayPage page) => page.For(office.Coach))).Messages.Single().Name);
    }

    [Fact]
    public async Task Taking_back_what_waits_leaves_what_went()
    {
        var office = await Office();
        await Write(office, await Alma(office));
        Assert.Equal(0, await office.Do((OfficeMessages messages) => messages.EndAbout((Subject, null), [MessageKind.SecondLook], "moved")));
        Assert.Equal(1, await office.Do((OfficeMessages messages) => messages.EndAbout((Subject, null), [PostCards.Kind], "moved")));

        Assert.Equal(SweepResult.Nothing, await Sweep(office));
        Assert.Equal((MessageState.Skipped, "moved"), ((await Only(office)).State, (await Only(office)).LastProblem));
    }

    private static Task<StudentId> Alma(TestOffice office) => office.Register(AStudent.Named("Alma", "Reed") with { Email = "alma.reed@example.org" });

    private static Task<Message> Only(TestOffice office) => office.Read(db => db.Messages.AsNoTracking().SingleAsync());

    private static Task<SweepResult> Sweep(TestOffice office) => office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));

    private static Task Write(TestOffice office, StudentId? student, bool atOnce = false) => Write(office, student, Subject, atOnce);

    private static async Task Write(TestOffice office, StudentId? student, Guid? subject, bool atOnce = false)
    {
        await using var scope = office.Services.CreateAsyncScope();
        var due = new DueMessage { Kind = PostCards.Kind, StudentId = student, SubjectId = subject, DueAt = office.Now, AtOnce = atOnce, Reason = "test", Occasion = "1" };
        await scope.ServiceProvider.GetRequiredService<OfficeMessages>().Write(due);
        await scope.ServiceProvider.GetRequiredService<OfficeDb>().SaveChangesAsync();
    }

    private Task<TestOffice> Office() => fixture.Another(opened: true, services => services.AddScoped(_ => new OfficeLetters([_cards])));
}

public sealed class OfficeMessagesOnSqlite(SqliteOffice office) : OfficeMessagesTests(office), IClassFixture<SqliteOffice>;

public sealed class OfficeMessagesOnPostgreSql(PostgreSqlOffice office) : OfficeMessagesTests(office), IClassFixture<PostgreSqlOffice>;
