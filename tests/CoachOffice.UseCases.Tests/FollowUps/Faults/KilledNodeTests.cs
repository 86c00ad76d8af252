using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Tests.Fixtures;

namespace CoachOffice.UseCases.Tests.FollowUps.Faults;

/// <summary>
/// Nodes are killed while they send to a mail server of its own process. Nothing is lost; whatever went twice had been taken by the server and was not yet noted at a kill, one a kill at most.
/// Whole form: 200 kills, 5,000 messages (COACHOFFICE_FULL_PROOF=1).
/// </summary>
public abstract class KilledNodeTests(OfficeFixture fixture, ITestOutputHelper output)
{
    private const int Seed = 20_261_127;
    private static readonly bool Whole = Environment.GetEnvironmentVariable("COACHOFFICE_FULL_PROOF") == "1";
    private static readonly (int Kills, int Messages) Size = Whole ? (200, 5_000) : (10, 500);

    [Fact]
    public async Task A_node_killed_again_and_again_loses_nothing_and_doubles_only_what_was_on_its_way()
    {
        await using var office = await FaultOffice.With(await fixture.Another(opened: true), (MessageKind.RetestPrompt, Size.Messages * 6 / 10), (MessageKind.PracticeNudge, Size.Messages * 2 / 10), (MessageKind.PlanDelivery, Size.Messages * 2 / 10));
        await office.Server.Tell("pause 4");
        var (chance, kills, taken) = (new Random(Seed), new List<KillRecord>(), 0);
        for (var n = 0; n < Size.Kills; n++)
        {
            var node = await office.Node();
            await office.UntilAccepted(Math.Min(Size.Messages, taken + chance.Next(1, Size.Messages * 3 / 2 / Size.Kills)));
            await Task.Delay(TimeSpan.FromMilliseconds(chance.NextDouble() * 6), TestContext.Current.CancellationToken);
            await node.Kill();
            kills.Add(await Record(office, taken));
            taken = (await office.Accepted()).Count;
            await office.Jump(FaultOffice.Lease);
        }

        var last = await office.Node();
        await office.Finish(last);
        await Judge(office, kills, $"{Size.Kills} kills");
    }

    [Fact]
    public async Task Two_nodes_share_the_work_and_one_is_killed_in_the_middle_of_it()
    {
        await using var office = await FaultOffice.With(await fixture.Another(opened: true), (MessageKind.RetestPrompt, Size.Messages));
        await office.Server.Tell("pause 2");
        var nodes = await Task.WhenAll(office.Node(), office.Node());
        await office.UntilAccepted(Size.Messages / 3);

        await nodes[0].Kill();
        var kill = await Record(office, 0);
        await office.Finish(nodes[1]);

        await Judge(office, [kill], "two nodes, one killed");
    }

    // One sender: what was on its way at the kill is the last the server took in this life. With two nodes it is any that the server has and the database waits for.
    private static async Task<KillRecord> Record(FaultOffice office, int before)
    {
        var accepted = (await office.Accepted()).Skip(before).ToHashSet(StringComparer.Ordinal);
        var due = await office.Due();
        var open = due.Where(m => m.Value.State == MessageState.Waiting && m.Value.ClaimedBy is not null && accepted.Contains(m.Key)).Select(m => m.Key).ToList();
        return new KillRecord(open.LastOrDefault(), due.Where(m => m.Value is { State: MessageState.Waiting, SendingAt: not null }).Select(m => m.Key).LastOrDefault());
    }

    private async Task Judge(FaultOffice office, IReadOnlyList<KillRecord> kills, string what)
    {
        var (accepted, due) = (await office.Accepted(), await office.Due());
        var doubled = accepted.GroupBy(id => id, StringComparer.Ordinal).Where(g => g.Count() > 1).ToDictionary(g => g.Key, g => g.Count() - 1, StringComparer.Ordinal);
        var lost = due.Where(m => m.Value.State != MessageState.Unknown && !accepted.Contains(m.Key)).ToList();
        var asked = due.Where(m => m.Value.State == MessageState.Unknown).ToList();
        output.WriteLine($"{office.Database.Provider}, {due.Count} messages, {what}: lost {lost.Count}, doubled {doubled.Values.Sum()} of {kills.Count(k => k.Accepted is not null)} taken and not noted at a kill, a person asked about {asked.Count}.");

        Assert.Equal(Size.Messages, due.Count);
        Assert.Empty(lost);
        Assert.All(due.Values, m => Assert.True(m.State == MessageState.Sent || (m.State == MessageState.Unknown && m.Kind == MessageKind.PlanDelivery), $"{m.Kind} {m.State} {m.LastProblem}"));
        Assert.All(doubled, d => Assert.True(d.Value <= kills.Count(k => k.Accepted == d.Key), $"{d.Key} went {d.Value + 1} times."));
        Assert.All(asked, a => Assert.Contains(kills, k => k.Begun == a.Key));
        Assert.DoesNotContain(doubled.Keys, id => due[id].Kind == MessageKind.PlanDelivery);
    }
}

public sealed class KilledNodeOnSqlite(SqliteOffice office, ITestOutputHelper output) : KilledNodeTests(office, output), IClassFixture<SqliteOffice>;

public sealed class KilledNodeOnPostgreSql(PostgreSqlOffice office, ITestOutputHelper output) : KilledNodeTests(office, output), IClassFixture<PostgreSqlOffice>;
