using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Regressions;

/// <summary>A message sent again after its trouble was mended went on showing that trouble while it waited.</summary>
public sealed class SentAgainTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    [Fact]
    public async Task A_message_sent_again_no_longer_shows_what_was_wrong_before()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        await scene.Office.Read(db => db.Messages.Where(m => m.Kind == MessageKind.PlanDelivery)
            .ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.NeedsAttention).SetProperty(x => x.LastProblem, "no-sender")));
        var message = await scene.Office.Read(db => db.Messages.SingleAsync(m => m.Kind == MessageKind.PlanDelivery));

        Assert.True((await scene.Office.Do((SendMessageNow send) => send.Now(message.Id, scene.Office.Coach))).Succeeded);

        Assert.Null(await scene.Office.Read(db => db.Messages.Where(m => m.Id == message.Id).Select(m => m.LastProblem).SingleAsync()));
    }
}
