using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.FollowUps.Faults;

/// <summary>The database is held by another process, the clock jumps: all mail goes, none twice.</summary>
public abstract class FaultyMachineTests(OfficeFixture fixture)
{
    private const int Messages = 200;

    [Fact]
    public async Task While_another_process_holds_the_database_mail_waits_and_then_goes_once()
    {
        await using var office = await FaultOffice.With(await fixture.Another(opened: true), (MessageKind.RetestPrompt, Messages));
        await office.Server.Tell("pause 4");
        var node = await office.Node();
        await office.UntilAccepted(20);

        await using (var db = new OfficeDb(office.Database.Options()))
        {
            await using var held = await db.Database.BeginTransactionAsync(TestContext.Current.CancellationToken);
            if (office.Database.Provider == DatabaseProvider.PostgreSql) await db.Database.ExecuteSqlRawAsync("LOCK TABLE \"Messages\" IN EXCLUSIVE MODE", TestContext.Current.CancellationToken);
            var before = (await office.Accepted()).Count;
            await Task.Delay(TimeSpan.FromSeconds(6), TestContext.Current.CancellationToken);
            Assert.InRange((await office.Accepted()).Count - before, 0, 1);
        }

        await EachOnce(office, node);
    }

    [Fact]
    public async Task A_clock_that_is_set_back_an_hour_or_forward_a_day_loses_and_doubles_nothing()
    {
        await using var office = await FaultOffice.With(await fixture.Another(opened: true), (MessageKind.RetestPrompt, Messages));
        await office.Server.Tell("pause 4");
        var killed = await office.Node();
        await office.UntilAccepted(20);
        await office.Jump(TimeSpan.FromHours(-1), killed);
        await office.UntilAccepted(40);

        // What it holds is leased until a time that is now an hour and a day away.
        await office.Server.Tell("pause 200");
        var taken = (await office.Accepted()).Count;
        await office.UntilAccepted(taken + 1);
        await killed.Kill();
        var open = (await office.Due()).Where(m => m.Value is { State: MessageState.Waiting, ClaimedBy: not null }).Select(m => m.Key).Intersect(await office.Accepted(), StringComparer.Ordinal).ToList();
        await office.Server.Tell("pause 4");
        await office.Jump(TimeSpan.FromHours(-1));
        var node = await office.Node();
        await office.UntilAccepted(taken + 20);
        await office.Jump(TimeSpan.FromDays(3), node);

        await EachOnce(office, node, open);
    }

    private static async Task EachOnce(FaultOffice office, FaultProgram node, IReadOnlyList<string>? open = null)
    {
        await office.Finish(node);
        var (accepted, due) = (await office.Accepted(), await office.Due());
        var first = due.Where(m => m.Value.Kind == MessageKind.RetestPrompt).ToList();
        Assert.Equal(Messages, first.Count);
        Assert.All(first, m => Assert.Equal(MessageState.Sent, m.Value.State));
        Assert.All(first, m => Assert.InRange(accepted.Count(a => a == m.Key), 1, open?.Contains(m.Key) == true ? 2 : 1));
    }
}

public sealed class FaultyMachineOnSqlite(SqliteOffice office) : FaultyMachineTests(office), IClassFixture<SqliteOffice>;

public sealed class FaultyMachineOnPostgreSql(PostgreSqlOffice office) : FaultyMachineTests(office), IClassFixture<PostgreSqlOffice>;
