using CoachOffice.Domain.FollowUps;
using CoachOffice.FaultProof;
using CoachOffice.UseCases.Tests.Fixtures;

namespace CoachOffice.UseCases.Tests.FollowUps.Faults;

/// <summary>What becomes of mail when the server in the other process misbehaves for a while, and then does not.</summary>
public sealed class FaultyServerTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    private const int Each = 6;

    /// <summary>Half are encouragement, which may repeat, half plans, which may not.</summary>
    [Theory]
    [InlineData(ServerMode.Hang)]
    [InlineData(ServerMode.Later)]
    [InlineData(ServerMode.Never)]
    [InlineData(ServerMode.DropAfterData)]
    [InlineData(ServerMode.DropReply)]
    public async Task Nothing_is_lost_and_only_what_may_repeat_and_was_taken_without_a_word_comes_twice(ServerMode mode)
    {
        await using var office = await FaultOffice.With(await fixture.Another(opened: true), (MessageKind.RetestPrompt, Each), (MessageKind.PlanDelivery, Each));
        await office.Server.Tell($"{mode}");
        var node = await office.Node();
        await office.Until(async db => await Tried(db) >= (mode == ServerMode.Hang ? 1 : 2 * Each), "an attempt at all");
        await office.Server.Tell($"{ServerMode.Normal}");

        await office.Finish(node);

        var (accepted, due) = (await office.Accepted(), await office.Due());
        var (prompts, plans) = (due.Where(m => m.Value.Kind == MessageKind.RetestPrompt).ToList(), due.Where(m => m.Value.Kind == MessageKind.PlanDelivery).ToList());
        int Times(string id) => accepted.Count(a => a == id);
        if (mode == ServerMode.Never)
        {
            Assert.All(due.Values, m => Assert.Equal((MessageState.NeedsAttention, "message-refused"), (m.State, m.LastProblem)));
            Assert.Empty(accepted);
            return;
        }

        Assert.All(prompts, m => Assert.Equal(MessageState.Sent, m.Value.State));
        Assert.All(prompts, m => Assert.Equal(mode == ServerMode.DropReply ? 2 : 1, Times(m.Key)));
        Assert.All(plans, m => Assert.Equal(m.Value.State == MessageState.Unknown ? (mode == ServerMode.DropReply ? 1 : 0) : 1, Times(m.Key)));
        Assert.Equal(mode switch { ServerMode.Later => 0, ServerMode.Hang => plans.Count(m => m.Value.State == MessageState.Unknown), _ => Each }, plans.Count(m => m.Value.State == MessageState.Unknown));
        Assert.All(plans, m => Assert.True(m.Value.State is MessageState.Sent or MessageState.Unknown));
    }

    private static Task<int> Tried(Data.OfficeDb db) =>
        Microsoft.EntityFrameworkCore.EntityFrameworkQueryableExtensions.CountAsync(db.Messages, m => m.LastProblem != null && m.State != MessageState.Skipped);
}
