using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Tests.FollowUps;

public sealed class MessageTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 5, 4, 10, 0);
    private static readonly Instant DueAt = Now + Duration.FromDays(3);

    private static readonly DueMessage Due = new()
    {
        Kind = MessageKind.RetestPrompt,
        StudentId = StudentId.From(FixedIds.Of(1)),
        PlanId = PlanId.From(FixedIds.Of(2)),
        SubjectId = FixedIds.Of(3),
        DueAt = DueAt,
        AtOnce = true,
        Reason = "The rung ends.",
        Occasion = "2026-05-07",
    };

    [Fact]
    public void It_waits_with_the_facts_it_was_written_for()
    {
        var message = Message.Due(FixedIds.Of(9), Due, Now);
        Assert.Equal((FixedIds.Of(9), MessageKind.RetestPrompt, Due.StudentId, Due.PlanId, Due.SubjectId), (message.Id, message.Kind, message.StudentId, message.PlanId, message.SubjectId));
        Assert.Equal((DueAt, true, "The rung ends.", Now, MessageState.Waiting), (message.DueAt, message.AtOnce, message.Reason, message.CreatedAt, message.State));
        Assert.Equal(Due.OnceKey, message.OnceKey);
    }

    [Fact]
    public void Its_name_on_the_wire_is_the_same_at_every_attempt() =>
        Assert.Equal("retest-prompt.00000009000000000000000000000000", Message.Due(FixedIds.Of(9), Due, Now).StableName);

    [Fact]
    public void The_same_cause_has_the_same_key_and_without_a_subject_the_plan_is_it()
    {
        Assert.Equal("retest-prompt|00000001000000000000000000000000|00000003000000000000000000000000|2026-05-07", Due.OnceKey);
        Assert.Equal("retest-prompt|00000001000000000000000000000000|00000002000000000000000000000000|2026-05-07", (Due with { SubjectId = null }).OnceKey);
        Assert.Equal("retest-prompt|-|00000003000000000000000000000000|2026-05-07", (Due with { StudentId = null, PlanId = null }).OnceKey);
        Assert.Throws<InvalidOperationException>(() => (Due with { PlanId = null, SubjectId = null }).OnceKey);
    }

    [Theory]
    [InlineData(MessageState.Waiting, MessageState.Held)]
    [InlineData(MessageState.Held, MessageState.Held)]
    [InlineData(MessageState.Skipped, MessageState.Skipped)]
    [InlineData(MessageState.Sent, MessageState.Sent)]
    [InlineData(MessageState.NeedsAttention, MessageState.NeedsAttention)]
    public void A_pause_holds_only_what_waits(MessageState before, MessageState after)
    {
        var message = In(before);
        message.Hold();
        Assert.Equal(after, message.State);
    }

    [Theory]
    [InlineData(MessageState.Waiting, MessageState.Waiting)]
    [InlineData(MessageState.Held, MessageState.Waiting)]
    [InlineData(MessageState.Skipped, MessageState.Skipped)]
    [InlineData(MessageState.Sent, MessageState.Sent)]
    [InlineData(MessageState.NeedsAttention, MessageState.Waiting)]
    public void Going_on_releases_what_was_held_or_stuck(MessageState before, MessageState after)
    {
        var message = In(before);
        message.Release(DueAt + Duration.FromDays(1));
        Assert.Equal((after, after == before ? DueAt : DueAt + Duration.FromDays(1)), (message.State, message.DueAt));
    }

    [Fact]
    public void A_released_message_keeps_a_later_day_and_starts_afresh()
    {
        var message = In(MessageState.NeedsAttention);
        message.Release(Now);
        Assert.Equal((DueAt, 0, null, null, null), (message.DueAt, message.Attempts, message.LeaseUntil, message.ClaimedBy, message.SendingAt));
    }

    [Theory]
    [InlineData(MessageState.Waiting, MessageState.Skipped)]
    [InlineData(MessageState.Held, MessageState.Skipped)]
    [InlineData(MessageState.Skipped, MessageState.Skipped)]
    [InlineData(MessageState.Sent, MessageState.Sent)]
    [InlineData(MessageState.NeedsAttention, MessageState.Skipped)]
    public void What_went_out_is_skipped_no_more(MessageState before, MessageState after)
    {
        var message = In(before);
        message.Skip("plan-ended");
        Assert.Equal((after, before == MessageState.Sent ? null : "plan-ended"), (message.State, message.LastProblem));
    }

    [Fact]
    public void It_can_be_moved()
    {
        var message = Message.Due(FixedIds.Of(9), Due, Now);
        message.MoveTo(Now);
        Assert.Equal(Now, message.DueAt);
    }

    // Claiming and sending are done by the database in one statement; here the state is put where it would be afterwards.
    private static Message In(MessageState state)
    {
        var message = Message.Due(FixedIds.Of(9), Due, Now);
        Set(nameof(Message.State), state);
        Set(nameof(Message.Attempts), 5);
        Set(nameof(Message.ClaimedBy), "one");
        Set(nameof(Message.LeaseUntil), (Instant?)Now);
        Set(nameof(Message.SendingAt), (Instant?)Now);
        return message;

        void Set(string name, object value) => typeof(Message).GetProperty(name)!.SetValue(message, value);
    }
}
