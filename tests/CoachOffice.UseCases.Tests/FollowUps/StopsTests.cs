using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using SmtpServer.Protocol;

namespace CoachOffice.UseCases.Tests.FollowUps;

/// <summary>Whatever stops messages holds to the end of the way: for what waits, for what was claimed and written already, and for what is written later.</summary>
public abstract class StopsTests(OfficeFixture fixture)
{
    [Fact]
    public async Task Plans_stopped_are_not_mailed_but_the_coach_is_told()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        await Stop(scene.Office, scene.Student, MessagePurpose.Plan);

        var delivery = (await Delivery(scene)).Id;
        Assert.Equal(MessageState.NeedsAttention, (await Delivery(scene)).State);
        await scene.Office.Must((SendMessageNow send) => send.Now(delivery, scene.Office.Coach));
        Assert.Equal(new SweepResult(0, 0, 0, 0, 1), await scene.Sweep());

        var row = Assert.Single((await scene.Office.Must((ListMessages list) => list.Now(MessageFilter.NeedsAttention, 1, scene.Office.Coach))).Rows);
        Assert.Contains("hand over its link", row.Problem, StringComparison.Ordinal);
        Assert.Contains(await scene.Messages(), m => m.Kind == MessageKind.PracticeNudge && m.State == MessageState.Waiting);
    }

    [Fact]
    public async Task Encouragement_stopped_leaves_the_plan_itself_and_can_be_asked_for_again()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        var token = await Stop(scene.Office, scene.Student, MessagePurpose.Encouragement);

        Assert.Equal(1, (await scene.Sweep()).Sent);
        Assert.All((await scene.Messages()).Where(m => m.Kind != MessageKind.PlanDelivery), m => Assert.Equal((MessageState.Skipped, "messages-stopped"), (m.State, m.LastProblem)));

        Assert.Empty((await scene.Office.Must((AskForMessages ask) => ask.By(token, MessagePurpose.Encouragement))).Stopped);
        Assert.Equal(["messages-asked-for", "messages-stopped"], await scene.Office.Read(db => db.AuditEntries.Where(a => a.Detail == "encouragement").Select(a => a.Action).Order().ToListAsync()));
    }

    [Fact]
    public async Task A_kind_nobody_may_stop_and_a_link_of_another_sort_are_refused()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        var token = await Link(scene.Office, scene.Student, MessagePurpose.Plan);
        var visits = new Uri((await scene.Office.Must((IssueVisitLink issue) => issue.For(scene.Student, scene.Office.Desk))).ToString()).Segments[^1];

        Assert.Equal("stop-unknown", (await scene.Office.Refuses((StopMessages stop) => stop.By(token, MessagePurpose.Office))).Single().Code);
        Assert.Equal("stop-link-not-found", (await scene.Office.Refuses((StopMessages stop) => stop.By(visits))).Single().Code);
        Assert.Equal(1, (await scene.Sweep()).Sent);
    }

    [Fact]
    public async Task A_guardian_who_withdraws_gets_nothing_more_and_the_coach_sees_what_would_have_gone()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true), AStudent.Junior("Kit", "Marsh"));
        Assert.Equal(NotAllowed.Code, (await scene.Office.Refuses((WithdrawGuardian withdraw) => withdraw.Of(scene.Student, new Actor(null, "nobody", null)))).Single().Code);

        await scene.Office.Must((WithdrawGuardian withdraw) => withdraw.Of(scene.Student, scene.Office.Desk));

        var delivery = (await Delivery(scene)).Id;
        Assert.Equal((MessageState.NeedsAttention, "guardian-withdrew"), ((await Delivery(scene)).State, (await Delivery(scene)).LastProblem));
        scene.At(3, 30);
        Assert.Equal(0, (await scene.Sweep()).Sent);
        await scene.Office.Must((SendMessageNow send) => send.Now(delivery, scene.Office.Coach));
        Assert.Equal((0, 1), ((await scene.Sweep()).Sent, await scene.Office.Read(db => db.Messages.CountAsync(m => m.State == MessageState.NeedsAttention))));

        await scene.Office.Must((LetGuardianBack back) => back.For(scene.Student, scene.Office.Coach));
        await scene.Office.Must((SendMessageNow send) => send.Now(delivery, scene.Office.Coach));
        Assert.Equal(1, (await scene.Sweep()).Sent);
    }

    [Fact]
    public async Task A_grown_up_has_no_guardian_who_could_withdraw()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));

        Assert.Equal("stop-guardian", (await scene.Office.Refuses((WithdrawGuardian withdraw) => withdraw.Of(scene.Student, Actor.Student))).Single().Code);
    }

    // The first mail is with the server when the others, claimed and written with it, are stopped.
    [Theory]
    [InlineData("pain")]
    [InlineData("unsubscribed")]
    [InlineData("guardian")]
    [InlineData("erased")]
    public async Task What_was_claimed_and_written_already_does_not_go(string cause)
    {
        await using var server = new MailServer(MailServer.FreePort());
        var office = await fixture.Another(opened: true, services => services.AddSingleton(new MailSettings { Host = "127.0.0.1", Port = server.Port, AllowPlain = true, TimeoutSeconds = 2 }));
        await Scene.Approved(office, AStudent.Named("Ann", "First"));
        office.Time.Advance(TimeSpan.FromSeconds(1));
        var second = await Scene.Approved(office, cause == "guardian" ? AStudent.Junior("Kit", "Marsh") : AStudent.Named("Ben", "Second"));
        var began = 0;
        server.OnMessage = async _ =>
        {
            if (began++ == 0) await Cause(second, cause);
            return SmtpResponse.Ok;
        };

        Assert.Equal(1, (await second.Sweep()).Sent);

        Assert.Equal("ann.first@example.org", Assert.Single(server.Taken).To.Mailboxes.Single().Address);
        Assert.NotEqual(MessageState.Sent, (await Delivery(second)).State);
    }

    private static async Task Cause(Scene scene, string cause)
    {
        if (cause == "pain") await scene.CheckIn(scene.Practised() with { Pain = true });
        if (cause == "unsubscribed") await Stop(scene.Office, scene.Student, MessagePurpose.Plan);
        if (cause == "guardian") await scene.Office.Must((WithdrawGuardian withdraw) => withdraw.Of(scene.Student, Actor.Student));
        if (cause == "erased") await scene.Office.Must((EraseStudent erase) => erase.ForGood(scene.Student, scene.Office.Owner));
    }

    private static async Task<string> Link(TestOffice office, StudentId student, MessagePurpose purpose) =>
        await office.Do(async (IServiceProvider services) =>
        {
            var token = services.GetRequiredService<PrivateLinks>().MintStop(student, purpose);
            await services.GetRequiredService<OfficeDb>().SaveChangesAsync();
            return token;
        });

    private static async Task<string> Stop(TestOffice office, StudentId student, MessagePurpose purpose)
    {
        var token = await Link(office, student, purpose);
        await office.Must((StopMessages stop) => stop.By(token));
        return token;
    }

    private static async Task<Message> Delivery(Scene scene) => (await scene.Messages()).Single(m => m.Kind == MessageKind.PlanDelivery);
}

public sealed class StopsOnSqlite(SqliteOffice office) : StopsTests(office), IClassFixture<SqliteOffice>;

public sealed class StopsOnPostgreSql(PostgreSqlOffice office) : StopsTests(office), IClassFixture<PostgreSqlOffice>;
