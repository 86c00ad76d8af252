using System.Text.RegularExpressions;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using MimeKit;
using NodaTime;

namespace CoachOffice.UseCases.Tests.FollowUps;

public abstract class SweepMessagesTests(OfficeFixture fixture)
{
    [Fact]
    public async Task The_approved_plan_lies_in_the_mail_folder_with_a_link_that_opens_it_and_whose_token_is_kept_nowhere()
    {
        var scene = await Approved();

        Assert.Equal(1, (await scene.Sweep()).Sent);
        Assert.Equal(SweepResult.Nothing, await scene.Sweep());

        var mail = Assert.Single(Mails(scene));
        Assert.Equal("Harbour Road Golf Practice: your plan from the lesson of Monday 2 March", mail.Subject);
        Assert.Equal(("ida.marsh@example.org", "office@harbour-road.example"), (mail.To.Mailboxes.Single().Address, mail.From.Mailboxes.Single().Address));
        Assert.Equal(scene.Office.Now.ToDateTimeOffset(), mail.Date);
        var token = Token(mail, "/p/");
        Assert.Equal(scene.Plan, (await scene.Office.Do((PrivateLinks links) => links.Open(token)))!.PlanId);
        Assert.Null(await scene.Office.Do((PrivateLinks links) => links.Open(token, LinkPurpose.StopMessages)));
        Assert.Null(await scene.Office.Do((PrivateLinks links) => links.Open(Token(mail, "/stop/"))));
        Assert.DoesNotContain(token, string.Join(' ', await scene.Office.Read(db => db.PrivateLinks.Select(l => l.TokenSha256).ToListAsync())), StringComparison.Ordinal);
        Assert.Contains("licensed professional", mail.TextBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_goes_out_that_no_coach_approved()
    {
        var scene = await Scene.Drafted(await fixture.Another(opened: true));
        scene.At(3, 30);

        Assert.Equal(SweepResult.Nothing, await scene.Sweep());
    }

    [Fact]
    public async Task A_juniors_mail_goes_to_the_guardian()
    {
        var scene = await Approved(AStudent.Junior("Kit", "Marsh"));

        await scene.Sweep();

        var mail = Assert.Single(Mails(scene));
        Assert.Equal(("Mara Marsh", "mara.marsh@example.org"), (mail.To.Mailboxes.Single().Name!, mail.To.Mailboxes.Single().Address));
        Assert.Contains("for Kit", mail.Subject, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_plan_approved_late_goes_at_once_but_a_late_reminder_waits_for_the_morning()
    {
        var office = await fixture.Another(opened: true);
        office.Time.Advance(TimeSpan.FromHours(13));
        var scene = await Scene.Approved(office);
        Assert.Equal(1, (await scene.Sweep()).Sent);
        scene.At(3, 6, 22);

        Assert.Equal(new SweepResult(0, 1, 0, 0, 0), await scene.Sweep());

        var nudge = (await scene.Messages()).Single(m => m.Kind == MessageKind.PracticeNudge);
        Assert.Equal((Instant.FromUtc(2026, 3, 7, 9, 0), 0), (nudge.DueAt, nudge.Attempts));
        scene.At(3, 7, 9);
        Assert.Equal(1, (await scene.Sweep()).Sent);
    }

    [Fact]
    public async Task A_note_follows_the_plans_mail_and_after_two_unanswered_there_is_silence_and_the_coach_sees_it()
    {
        var scene = await Approved();
        for (var day = 0; day < 40; day++)
        {
            await scene.Sweep();
            scene.Office.Time.Advance(TimeSpan.FromDays(1));
        }

        var messages = await scene.Messages();
        Assert.Equal([MessageState.Sent, MessageState.Sent], messages.Where(m => m.Kind == MessageKind.PracticeNudge).Select(m => m.State));
        var delivery = messages.Single(m => m.Kind == MessageKind.PlanDelivery);
        var notes = Mails(scene).Where(m => m.MessageId!.StartsWith("practice-nudge", StringComparison.Ordinal)).ToList();
        Assert.All(notes, note => Assert.Equal($"plan-delivery.{delivery.Id:N}@localhost", note.InReplyTo));
        Assert.Equal(2, notes.Select(n => n.TextBody).Distinct().Count());
        var today = await scene.Office.Do((TodayPage page) => page.For(scene.Office.Coach));
        Assert.Equal(scene.Plan, Assert.Single(today.Silent).PlanId);
        Assert.Equal("Head shift on the way down", today.Retests.Single().FaultName);
    }

    [Fact]
    public async Task A_retest_prompt_waits_when_the_student_is_taught_that_day()
    {
        var scene = await Approved();
        await scene.Sweep();
        scene.At(3, 9);
        await Scene.LessonOf(scene.Office, scene.Student, new LocalDate(2026, 3, 9));

        await scene.Sweep();

        var prompt = (await scene.Messages()).Single(m => m.Kind == MessageKind.RetestPrompt);
        Assert.Equal((MessageState.Waiting, Instant.FromUtc(2026, 3, 10, 9, 0)), (prompt.State, prompt.DueAt));
        Assert.Equal(new LocalDate(2026, 3, 10), (await scene.Looks()).Single().DueOn);
        scene.At(3, 10);
        await scene.Sweep();
        Assert.Equal([MessageState.Sent, MessageState.Waiting], (await scene.Messages()).Where(m => m.Kind == MessageKind.RetestPrompt).Select(m => m.State));
    }

    [Fact]
    public async Task A_stop_link_changes_nothing_by_being_opened_and_ends_reminders_when_used()
    {
        var scene = await Approved();
        await scene.Sweep();
        scene.At(3, 6);
        await scene.Sweep();
        var token = Token(Mails(scene).Last(), "/stop/");

        Assert.False((await scene.Office.Do((StopPage page) => page.Of(token)))!.AlreadyStopped);
        Assert.Contains(await scene.Messages(), m => m.State == MessageState.Waiting);
        await scene.Office.Must((StopMessages stop) => stop.By(token));
        Assert.True((await scene.Office.Must((StopMessages stop) => stop.By(token))).AlreadyStopped);

        Assert.DoesNotContain(await scene.Messages(), m => m.State == MessageState.Waiting);
        scene.At(3, 30);
        Assert.Equal(0, (await scene.Sweep()).Sent);
        Assert.Single((await scene.Office.Do((TodayPage page) => page.For(scene.Office.Coach))).Retests);
        await scene.Office.Must((AllowMessages allow) => allow.For(scene.Student, MessagePurpose.Encouragement, scene.Office.Desk));
        Assert.False((await scene.Office.Do((StopPage page) => page.Of(token)))!.AlreadyStopped);
        Assert.Equal("stop-link-not-found", (await scene.Office.Refuses((StopMessages stop) => stop.By("nonsense"))).Single().Code);
    }

    [Fact]
    public async Task Without_an_address_a_person_is_asked_and_the_plan_goes_once_there_is_one()
    {
        var scene = await Approved(Scene.Adult with { Email = "" });

        Assert.Equal(1, (await scene.Sweep()).NeedAttention);

        var list = await scene.Office.Must((ListMessages messages) => messages.Now(MessageFilter.NeedsAttention, 1, scene.Office.Desk));
        var row = Assert.Single(list.Rows);
        Assert.Contains("no mail address", row.Problem, StringComparison.Ordinal);
        await scene.Office.Must((UseCases.Students.ChangeStudent change) => change.To(scene.Student, 1, Scene.Adult, scene.Office.Coach));
        await scene.Office.Must((SendMessageNow send) => send.Now(row.Id, scene.Office.Coach));
        Assert.Equal(1, (await scene.Sweep()).Sent);
    }

    [Fact]
    public async Task A_message_can_be_moved_to_a_decent_hour_or_left_out_but_not_after_it_went()
    {
        var scene = await Approved();
        var office = scene.Office;
        await scene.Sweep();
        var messages = await scene.Messages();
        var (delivery, prompt, nudge) = (messages.Single(m => m.Kind == MessageKind.PlanDelivery), messages.Single(m => m.Kind == MessageKind.RetestPrompt), messages.Single(m => m.Kind == MessageKind.PracticeNudge));

        Assert.Equal("message-quiet", (await office.Refuses((MoveMessage move) => move.To(prompt.Id, new LocalDate(2026, 3, 12), new LocalTime(21, 0), office.Coach))).Single().Code);
        Assert.Equal("message-over", (await office.Refuses((SkipMessage skip) => skip.Now(delivery.Id, "no", office.Coach))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((SkipMessage skip) => skip.Now(nudge.Id, "no", office.Desk))).Single().Code);
        await office.Must((MoveMessage move) => move.To(prompt.Id, new LocalDate(2026, 3, 12), null, office.Coach));
        await office.Must((SkipMessage skip) => skip.Now(nudge.Id, "spoke on the phone", office.Coach));

        Assert.Equal(new LocalDate(2026, 3, 12), (await scene.Looks()).Single().DueOn);
        scene.At(3, 11);
        Assert.Equal(SweepResult.Nothing, await scene.Sweep());
    }

    private static List<MimeMessage> Mails(Scene scene) =>
        [.. Directory.GetFiles(Path.Combine(scene.Office.Folder, "mail"), "*.eml").Select(file => MimeMessage.Load(file)).OrderBy(m => m.Date)];

    private static string Token(MimeMessage mail, string path) => Regex.Match(mail.TextBody!, $"{Regex.Escape(path)}([A-Za-z0-9_-]{{43}})", RegexOptions.None, TimeSpan.FromSeconds(1)).Groups[1].Value;

    private async Task<Scene> Approved(Domain.Students.StudentDetails? details = null) => await Scene.Approved(await fixture.Another(opened: true), details);
}

public sealed class SweepMessagesOnSqlite(SqliteOffice office) : SweepMessagesTests(office), IClassFixture<SqliteOffice>;

public sealed class SweepMessagesOnPostgreSql(PostgreSqlOffice office) : SweepMessagesTests(office), IClassFixture<PostgreSqlOffice>;
