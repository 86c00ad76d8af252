using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Ledger;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.FollowUps.ByTime;
using CoachOffice.UseCases.FollowUps.Wordings;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using MimeKit;
using NodaTime;

namespace CoachOffice.UseCases.Tests.FollowUps.ByTime;

public abstract class WriteByTimeTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_plan_that_runs_brings_one_question_for_its_week_and_never_the_same_twice()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));

        Assert.Equal((1, 0), (await Write(scene.Office), await Write(scene.Office)));

        var question = (await scene.Messages()).Single(m => m.Kind == MessageKind.WeeklyCheckIn);
        Assert.Equal(Instant.FromUtc(2026, 3, 9, 9, 0), question.DueAt);
        Assert.Contains("the week's question is due", question.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_minor_is_asked_nothing_week_after_week()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true), AStudent.Junior("Kit", "Marsh"));

        Assert.Equal(0, await Write(scene.Office));
        Assert.DoesNotContain(await scene.Messages(), m => MessageTraits.IsEncouragement(m.Kind));
    }

    [Fact]
    public async Task Two_encouragements_of_whatever_kind_without_an_answer_end_them_all()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        for (var day = 2; day <= 30; day++)
        {
            scene.At(3, day);
            await Write(scene.Office);
            await scene.Sweep();
        }

        var sent = (await scene.Messages()).Where(m => MessageTraits.IsEncouragement(m.Kind) && m.State == MessageState.Sent).ToList();
        Assert.Equal([MessageKind.PracticeNudge, MessageKind.WeeklyCheckIn], sent.Select(m => m.Kind).Order());
        Assert.DoesNotContain(await scene.Messages(), m => MessageTraits.IsEncouragement(m.Kind) && m.State == MessageState.Waiting);

        await scene.CheckIn(scene.Practised());
        await Write(scene.Office);
        Assert.Contains(await scene.Messages(), m => m.Kind == MessageKind.WeeklyCheckIn && m.State == MessageState.Waiting);
    }

    [Fact]
    public async Task Who_wrote_a_moment_ago_is_not_asked()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        await Write(scene.Office);
        scene.At(3, 8, 18);
        await scene.CheckIn(scene.Practised());
        scene.At(3, 9);

        await scene.Sweep();

        var question = (await scene.Messages()).Single(m => m.Kind == MessageKind.WeeklyCheckIn);
        Assert.Equal((MessageState.Skipped, "answered"), (question.State, question.LastProblem));
    }

    [Fact]
    public async Task The_question_leads_straight_to_the_page_that_takes_a_note()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        await Write(scene.Office);
        await scene.Sweep();
        scene.At(3, 9);

        // A note about practice is due as well: it goes, and the question a day later.
        await scene.Sweep();
        Assert.Empty(Directory.GetFiles(Path.Combine(scene.Office.Folder, "mail"), "weekly-check-in.*.eml"));
        scene.At(3, 10);
        await scene.Sweep();

        var mail = Directory.GetFiles(Path.Combine(scene.Office.Folder, "mail"), "weekly-check-in.*.eml").Select(file => MimeMessage.Load(file)).Single();
        Assert.Matches(@"/p/[A-Za-z0-9_-]{43}/note\s", mail.TextBody);
        Assert.Contains("List-Unsubscribe", mail.Headers.Select(h => h.Field));
    }

    [Fact]
    public async Task What_is_owed_too_long_waits_for_a_coach_goes_once_and_is_off_the_list_when_paid()
    {
        var office = await fixture.Another(opened: true);
        var student = await office.Register(AStudent.Named("Ida", "Marsh"));
        var payer = await office.Must((OpenPayer open) => open.For(student, office.Desk));
        var charge = new ChargeForm { Id = EntryId.From(Guid.Parse("80000000-0000-0000-0000-00000000000a")), PayerId = payer, StudentId = student, Lines = [new ChargeLine("A lesson", "45.00", "0")] };
        await office.Must((ChargePayer pay) => pay.From(charge, office.Desk));
        office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 25, 12, 0, 0, TimeSpan.Zero));

        Assert.Equal((1, 0), (await Write(office), await Write(office)));
        Assert.Equal(MessageState.AwaitsApproval, (await Payment(office)).State);

        await office.Must((TakePayment take) => take.From(new PaymentForm { Id = EntryId.From(Guid.Parse("80000000-0000-0000-0000-00000000000b")), PayerId = payer, Amount = "45.00", Method = PaymentMethod.Cash }, office.Desk));
        await Write(office);
        Assert.Equal((MessageState.Skipped, "paid"), ((await Payment(office)).State, (await Payment(office)).LastProblem));
    }

    [Fact]
    public async Task A_morning_list_goes_to_who_asked_for_it_when_it_has_something_to_say()
    {
        var scene = await Scene.Drafted(await fixture.Another(opened: true));
        var coach = scene.Office.Coach.Account!.Value.Value;
        Assert.Equal(0, await Write(scene.Office));
        await scene.Office.Change(db => db.Users.Where(u => u.Id == coach).ExecuteUpdateAsync(u => u.SetProperty(x => x.WantsMorningList, true)));
        Assert.Equal(1, await Write(scene.Office));
        scene.At(3, 3, 7, 5);

        Assert.Equal(1, (await scene.Sweep()).Sent);

        var mail = Directory.GetFiles(Path.Combine(scene.Office.Folder, "mail"), "morning-list.*.eml").Select(file => MimeMessage.Load(file)).Single();
        Assert.Contains("Drafts to look through:\n\n- Ida Marsh", mail.TextBody!.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.DoesNotContain("without a password", mail.TextBody, StringComparison.Ordinal);
    }

    private static Task<int> Write(TestOffice office) => office.Do((WriteByTime write) => write.Once());

    private static Task<Message> Payment(TestOffice office) => office.Read(db => db.Messages.AsNoTracking().SingleAsync(m => m.Kind == MessageKind.PaymentDue));
}

public sealed class WriteByTimeOnSqlite(SqliteOffice office) : WriteByTimeTests(office), IClassFixture<SqliteOffice>;

public sealed class WriteByTimeOnPostgreSql(PostgreSqlOffice office) : WriteByTimeTests(office), IClassFixture<PostgreSqlOffice>;
