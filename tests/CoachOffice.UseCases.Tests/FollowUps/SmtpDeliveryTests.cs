using System.Net;
using System.Net.Sockets;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using SmtpServer.Protocol;

namespace CoachOffice.UseCases.Tests.FollowUps;

public abstract class SmtpDeliveryTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_stopped_server_loses_nothing_and_the_plan_arrives_when_it_is_back()
    {
        var port = MailServer.FreePort();
        var scene = await Scene.Approved(await Office(port));

        Assert.Equal(1, (await scene.Sweep()).TriedAgainLater);
        Assert.Equal("mail-server-down", (await Delivery(scene)).LastProblem);
        await using var server = new MailServer(port);
        Assert.Equal(SweepResult.Nothing, await scene.Sweep());
        scene.Office.Time.Advance(TimeSpan.FromMinutes(2));

        Assert.Equal(1, (await scene.Sweep()).Sent);

        var mail = Assert.Single(server.Taken);
        var row = await Delivery(scene);
        Assert.Equal(($"plan-delivery.{row.Id:N}@localhost", MessageState.Sent, 2), (mail.MessageId, row.State, row.Attempts));
        Assert.Equal(2, await scene.Office.Read(db => db.PrivateLinks.CountAsync(l => l.PlanId == scene.Plan || l.Purpose == LinkPurpose.StopMessages)));
    }

    [Fact]
    public async Task After_five_attempts_a_person_is_asked_and_can_send_again()
    {
        var scene = await Scene.Approved(await Office(MailServer.FreePort()));
        for (var attempt = 0; attempt < 8; attempt++)
        {
            await scene.Sweep();
            scene.Office.Time.Advance(TimeSpan.FromHours(5));
        }

        var row = await Delivery(scene);
        Assert.Equal((MessageState.NeedsAttention, 5), (row.State, row.Attempts));
        Assert.Contains((await scene.Office.Do((TodayPage page) => page.For(scene.Office.Coach))).Messages, m => m.Id == row.Id);

        await scene.Office.Must((SendMessageNow send) => send.Now(row.Id, scene.Office.Coach));
        Assert.Equal((MessageState.Waiting, 0), ((await Delivery(scene)).State, (await Delivery(scene)).Attempts));
    }

    [Theory]
    [InlineData(SmtpReplyCode.MailboxUnavailable, MessageState.NeedsAttention)]
    [InlineData(SmtpReplyCode.ServiceUnavailable, MessageState.Waiting)]
    public async Task A_refused_address_is_shown_at_once_and_a_busy_server_asked_again(SmtpReplyCode code, MessageState expected)
    {
        await using var server = new MailServer(MailServer.FreePort()) { OnRecipient = _ => new SmtpResponse(code, "no") };
        var scene = await Scene.Approved(await Office(server.Port));

        await scene.Sweep();

        Assert.Equal(expected, (await Delivery(scene)).State);
        Assert.Empty(server.Taken);
    }

    [Fact]
    public async Task A_server_that_falls_silent_after_the_message_leaves_it_open_and_the_plan_is_not_sent_twice()
    {
        await using var server = new MailServer(MailServer.FreePort())
        {
            OnMessage = async stop =>
            {
                await Task.Delay(TimeSpan.FromSeconds(20), stop);
                return SmtpResponse.Ok;
            },
        };
        var scene = await Scene.Approved(await Office(server.Port));

        Assert.Equal(1, (await scene.Sweep()).NeedAttention);

        var row = await Delivery(scene);
        Assert.Equal((MessageState.Unknown, "sent-unknown"), (row.State, row.LastProblem));
        server.OnMessage = _ => Task.FromResult(SmtpResponse.Ok);
        scene.Office.Time.Advance(TimeSpan.FromHours(6));
        Assert.Equal(0, (await scene.Sweep()).Sent);
    }

    [Fact]
    public async Task A_server_that_never_answers_is_left_after_a_short_while_and_asked_again()
    {
        using var deaf = new TcpListener(IPAddress.Loopback, 0);
        deaf.Start();
        var scene = await Scene.Approved(await Office(((IPEndPoint)deaf.LocalEndpoint).Port));

        Assert.Equal(1, (await scene.Sweep()).TriedAgainLater);

        var row = await Delivery(scene);
        Assert.Equal((MessageState.Waiting, "mail-server-silent"), (row.State, row.LastProblem));
    }

    [Fact]
    public async Task A_crash_in_the_middle_leaves_the_plan_to_a_person()
    {
        await using var server = new MailServer(MailServer.FreePort());
        var scene = await Scene.Approved(await Office(server.Port));
        var office = scene.Office;
        await office.Change(db => db.Messages.Where(m => m.PlanId == scene.Plan && m.Kind == MessageKind.PlanDelivery).ExecuteUpdateAsync(
            m => m.SetProperty(x => x.SendingAt, office.Now).SetProperty(x => x.ClaimedBy, "a process that died").SetProperty(x => x.LeaseUntil, office.Now)));
        office.Time.Advance(TimeSpan.FromSeconds(1));

        Assert.Equal(1, (await scene.Sweep()).NeedAttention);

        Assert.Equal("sent-unknown", (await Delivery(scene)).LastProblem);
        Assert.Empty(server.Taken);
    }

    [Fact]
    public async Task Sweeps_at_once_on_two_nodes_send_each_message_once()
    {
        await using var server = new MailServer(MailServer.FreePort());
        var office = await Office(server.Port);
        for (var n = 0; n < 6; n++) await Scene.Approved(office, AStudent.Named($"Pupil{n}", "Marsh"));
        var second = await fixture.SecondNodeOf(office, Through(server.Port));

        var results = await Task.WhenAll(
            Task.Run(() => office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None))),
            Task.Run(() => office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None))),
            Task.Run(() => second.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None))));

        Assert.Equal(6, results.Sum(r => r.Sent));
        Assert.Equal(6, server.Taken.Count);
        Assert.Equal(6, server.Taken.Select(m => m.MessageId).Distinct().Count());
    }

    [Fact]
    public async Task From_the_demo_practice_nothing_leaves_by_smtp()
    {
        await using var server = new MailServer(MailServer.FreePort());
        var scene = await Scene.Approved(await Office(server.Port));
        await scene.Office.Change(db => db.Practices.ExecuteUpdateAsync(p => p.SetProperty(x => x.IsDemo, true)));

        Assert.Equal(1, (await scene.Sweep()).Sent);

        Assert.Empty(server.Taken);
        Assert.Single(Directory.GetFiles(Path.Combine(scene.Office.Folder, "mail")));
    }

    private static Action<IServiceCollection> Through(int port) =>
        services => services.AddSingleton(new MailSettings { Host = "127.0.0.1", Port = port, AllowPlain = true, TimeoutSeconds = 2, Folder = "" });

    private static Task<Message> Delivery(Scene scene) =>
        scene.Office.Read(db => db.Messages.AsNoTracking().SingleAsync(m => m.PlanId == scene.Plan && m.Kind == MessageKind.PlanDelivery));

    private Task<TestOffice> Office(int port) => fixture.Another(opened: true, Through(port));
}

public sealed class SmtpDeliveryOnSqlite(SqliteOffice office) : SmtpDeliveryTests(office), IClassFixture<SqliteOffice>;

public sealed class SmtpDeliveryOnPostgreSql(PostgreSqlOffice office) : SmtpDeliveryTests(office), IClassFixture<PostgreSqlOffice>;
