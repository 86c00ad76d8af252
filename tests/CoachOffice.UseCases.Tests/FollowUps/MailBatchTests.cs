using System.Data.Common;
using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using SmtpServer.Protocol;

namespace CoachOffice.UseCases.Tests.FollowUps;

/// <summary>What happens to messages that were claimed together while one of them is on its way.</summary>
public abstract class MailBatchTests(OfficeFixture fixture)
{
    [Fact]
    public async Task Mail_queued_already_does_not_go_once_its_student_is_archived_or_its_plan_paused()
    {
        await using var server = new MailServer(MailServer.FreePort());
        var office = await Office(server.Port);
        for (var n = 0; n < 3; n++)
        {
            await Scene.Approved(office, AStudent.Named($"Pupil{n}", "Marsh"));
            office.Time.Advance(TimeSpan.FromSeconds(1));
        }

        server.OnMessage = async _ =>
        {
            var (done, now) = (server.Taken.Count, office.Now);
            if (done == 0) await office.Change(db => db.Students.Where(s => s.GivenName == "Pupil1").ExecuteUpdateAsync(s => s.SetProperty(x => x.ArchivedAt, (Instant?)now)));
            if (done == 0) await office.Change(db => db.Plans.Where(p => db.Students.Any(s => s.Id == p.StudentId && s.GivenName == "Pupil2")).ExecuteUpdateAsync(p => p.SetProperty(x => x.Status, PlanStatus.OnHold)));
            return SmtpResponse.Ok;
        };

        Assert.Equal(1, (await Sweep(office)).Sent);

        Assert.Equal("pupil0.marsh@example.org", Assert.Single(server.Taken).To.Mailboxes.Single().Address);
        Assert.Equal(2, await office.Read(db => db.PrivateLinks.CountAsync()));
        Assert.Equal(2, await office.Read(db => db.Messages.CountAsync(m => m.Kind == MessageKind.PlanDelivery && m.State == MessageState.Waiting && m.SendingAt == null)));
    }

    [Fact]
    public async Task A_program_that_stops_brings_one_message_to_its_end_and_gives_the_others_back_as_new()
    {
        await using var server = new MailServer(MailServer.FreePort());
        using var stop = new CancellationTokenSource();
        var office = await Office(server.Port);
        for (var n = 0; n < 3; n++) await Scene.Approved(office, AStudent.Named($"Pupil{n}", "Marsh"));
        server.OnMessage = async _ =>
        {
            await stop.CancelAsync();
            return SmtpResponse.Ok;
        };

        Assert.Equal(1, (await office.Do((SweepMessages sweep) => sweep.Once(stop.Token))).Sent);

        var waiting = await office.Read(db => db.Messages.Where(m => m.Kind == MessageKind.PlanDelivery && m.State == MessageState.Waiting).ToListAsync());
        Assert.Equal([(0, null, null), (0, null, null)], waiting.Select(m => (m.Attempts, m.ClaimedBy, m.SendingAt)));
        Assert.Equal(2, await office.Read(db => db.PrivateLinks.CountAsync()));
        Assert.Equal(2, (await Sweep(office)).Sent);
    }

    [Fact]
    public async Task Two_for_one_student_due_together_see_each_other()
    {
        await using var server = new MailServer(MailServer.FreePort());
        var office = await Office(server.Port);
        var scene = await Scene.Approved(office);
        await scene.Sweep();
        scene.At(3, 6);
        await office.Change(db => db.Messages.Where(m => m.Kind == MessageKind.RetestPrompt).ExecuteUpdateAsync(m => m.SetProperty(x => x.DueAt, office.Now - Duration.FromMinutes(1))));
        await office.Change(db => db.Messages.Where(m => m.Kind == MessageKind.PracticeNudge).ExecuteUpdateAsync(m => m.SetProperty(x => x.DueAt, office.Now)));

        var swept = await scene.Sweep();

        Assert.Equal((1, 1), (swept.Sent, swept.PutOff));
        var nudge = (await scene.Messages()).Single(m => m.Kind == MessageKind.PracticeNudge && m.State == MessageState.Waiting);
        Assert.True(nudge.DueAt > office.Now, "Never twice on one day.");
    }

    [Fact]
    public async Task What_left_while_the_database_could_not_be_written_is_noted_later_and_not_sent_again()
    {
        await using var server = new MailServer(MailServer.FreePort());
        var full = new FullDisk();
        var office = await Office(server.Port, services => services.ConfigureDbContext<OfficeDb>(options => options.AddInterceptors(full)));
        var scene = await Scene.Approved(office);
        full.IsFull = true;

        await Assert.ThrowsAsync<NoRoomException>(scene.Sweep);
        await Assert.ThrowsAsync<NoRoomException>(scene.Sweep);
        full.IsFull = false;
        office.Time.Advance(TimeSpan.FromHours(1));
        Assert.Equal(0, (await scene.Sweep()).Sent);

        Assert.Single(server.Taken);
        Assert.Equal(MessageState.Sent, (await scene.Messages()).Single(m => m.Kind == MessageKind.PlanDelivery).State);
    }

    [Fact]
    public async Task A_message_the_program_stumbles_over_holds_up_no_other_and_is_given_up_after_five_times()
    {
        await using var server = new MailServer(MailServer.FreePort());
        var office = await Office(server.Port);
        var (bad, good) = (await Scene.Approved(office, AStudent.Named("Bad", "Marsh")), await Scene.Approved(office, AStudent.Named("Good", "Marsh")));
        await office.Change(db => db.Students.Where(s => s.Id == bad.Student).ExecuteUpdateAsync(s => s.SetProperty(x => x.Email, "no address at all <")));

        var first = await Sweep(office);

        Assert.Equal((1, 1), (first.Sent, first.TriedAgainLater));
        Assert.Equal(good.Student, await office.Read(db => db.PrivateLinks.Select(l => l.StudentId).Distinct().SingleAsync()));
        for (var n = 0; n < 5; n++)
        {
            office.Time.Advance(TimeSpan.FromHours(5));
            await Sweep(office);
        }

        var row = (await bad.Messages()).Single(m => m.Kind == MessageKind.PlanDelivery);
        Assert.Equal((MessageState.NeedsAttention, "gave-up"), (row.State, row.LastProblem));
    }

    [Fact]
    public async Task Who_knows_that_it_arrived_says_so_and_it_counts_as_sent()
    {
        await using var server = new MailServer(MailServer.FreePort());
        server.OnMessage = async stop =>
        {
            await Task.Delay(TimeSpan.FromSeconds(20), stop);
            return SmtpResponse.Ok;
        };
        var office = await Office(server.Port);
        var scene = await Scene.Approved(office);
        await scene.Sweep();
        var row = (await scene.Messages()).Single(m => m.Kind == MessageKind.PlanDelivery);
        Assert.Equal(MessageState.Unknown, row.State);
        Assert.Contains((await office.Do((TodayPage page) => page.For(office.Coach))).Messages, m => m.Id == row.Id);

        await office.Must((MessageArrived arrived) => arrived.Say(row.Id, office.Coach));

        Assert.Equal((MessageState.Sent, row.SendingAt), ((await scene.Messages()).Single(m => m.Id == row.Id).State, (await scene.Messages()).Single(m => m.Id == row.Id).SentAt));
        var nudge = (await scene.Messages()).Single(m => m.Kind == MessageKind.PracticeNudge);
        Assert.Equal("message-known", (await office.Refuses((MessageArrived arrived) => arrived.Say(nudge.Id, office.Coach))).Single().Code);
        Assert.Equal(UseCases.Access.NotAllowed.Code, (await office.Refuses((MessageArrived arrived) => arrived.Say(row.Id, office.Desk))).Single().Code);
    }

    private static Task<SweepResult> Sweep(TestOffice office) => office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));

    private Task<TestOffice> Office(int port, Action<IServiceCollection>? more = null) => fixture.Another(opened: true, services =>
    {
        services.AddSingleton(new MailSettings { Host = "127.0.0.1", Port = port, AllowPlain = true, TimeoutSeconds = 2 });
        more?.Invoke(services);
    });

    /// <summary>The database takes no note of what left, as on a full disk.</summary>
    private sealed class FullDisk : DbCommandInterceptor
    {
        public bool IsFull { get; set; }

        public override ValueTask<InterceptionResult<int>> NonQueryExecutingAsync(DbCommand command, CommandEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default) =>
            IsFull && command.CommandText.Contains("\"State\" = 'sent'", StringComparison.Ordinal) ? throw new NoRoomException() : base.NonQueryExecutingAsync(command, eventData, result, cancellationToken);
    }

    private sealed class NoRoomException : DbException;
}

public sealed class MailBatchOnSqlite(SqliteOffice office) : MailBatchTests(office), IClassFixture<SqliteOffice>;

public sealed class MailBatchOnPostgreSql(PostgreSqlOffice office) : MailBatchTests(office), IClassFixture<PostgreSqlOffice>;
