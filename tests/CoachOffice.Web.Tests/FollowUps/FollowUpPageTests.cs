using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests.FollowUps;

public sealed class FollowUpPageTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;

    public async ValueTask InitializeAsync() => _coach = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Without_messages_the_page_says_where_they_come_from()
    {
        await _coach.Open("/follow-ups");

        Assert.Contains("when you approve a plan", _coach.Page.QuerySelector(".empty")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Each_message_says_why_when_and_where_it_stands()
    {
        await _coach.Approves();

        await _coach.Open("/follow-ups");

        var messages = _coach.Page.QuerySelectorAll(".message");
        Assert.Contains(messages, m => m.TextContent.Contains("The plan was approved by", StringComparison.Ordinal));
        Assert.Contains(messages, m => m.TextContent.Contains("The stage \"Rehearse\" ends", StringComparison.Ordinal));
        Assert.All(messages, m => Assert.NotNull(m.QuerySelector("time")));
    }

    [Fact]
    public async Task A_message_is_moved_or_skipped_by_the_coach()
    {
        await _coach.Approves();
        await _coach.Open("/follow-ups");
        var before = _coach.Page.QuerySelectorAll(".message").Length;

        await _coach.Send(".message form[action*='skip']", ("Why", "Told them on the phone"));
        Assert.Equal(before - 1, _coach.Page.QuerySelectorAll(".message").Length);

        await _coach.Send(".message form[action*='move']", ("Day", "next week"));
        Assert.Contains("write it like", _coach.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_a_message_that_may_have_arrived_the_coach_says_that_it_did()
    {
        await _coach.Approves();
        await using (var scope = _office.Services.CreateAsyncScope())
        {
            await scope.ServiceProvider.GetRequiredService<OfficeDb>().Messages.Where(m => m.Kind == MessageKind.PlanDelivery)
                .ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Unknown).SetProperty(x => x.LastProblem, Problems.SentUnknown), TestContext.Current.CancellationToken);
        }

        await _coach.Open("/follow-ups?show=needs-attention");
        var message = Assert.Single(_coach.Page.QuerySelectorAll(".message.state-unknown"));
        Assert.Contains("may have arrived", message.QuerySelector(".state")!.TextContent, StringComparison.Ordinal);

        await _coach.Send(".message form[action*='arrived']");

        Assert.Empty(_coach.Page.QuerySelectorAll(".message"));
        await _coach.Open("/follow-ups?show=sent");
        Assert.Single(_coach.Page.QuerySelectorAll(".message"));
    }
}
