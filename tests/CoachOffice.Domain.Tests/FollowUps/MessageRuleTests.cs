using CoachOffice.Domain.FollowUps;

namespace CoachOffice.Domain.Tests.FollowUps;

public sealed class MessageRuleTests
{
    public static TheoryData<MessageKind> Kinds => [.. Enum.GetValues<MessageKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_holds_until_somebody_decides_is_within_its_own_limits(MessageKind kind)
    {
        var usual = MessageRule.Usual(Guid.Empty, kind);

        Assert.True(usual.IsOn);
        Assert.Empty(new MessageRuleDetails(usual.IsOn, usual.Timing, usual.WaitsForCoach).Check(kind));
    }

    [Fact]
    public void A_reminder_is_sent_a_day_before_unless_somebody_decides_otherwise() => Assert.Equal(24, MessageRule.Usual(Guid.Empty, MessageKind.LessonReminder).Timing);

    [Theory]
    [InlineData(MessageKind.LessonReminder, true, 1, false, nameof(MessageRuleDetails.Timing))]
    [InlineData(MessageKind.LessonReminder, true, 169, false, nameof(MessageRuleDetails.Timing))]
    [InlineData(MessageKind.Receipt, false, 0, false, nameof(MessageRuleDetails.IsOn))]
    [InlineData(MessageKind.WaitingOffer, true, 0, true, nameof(MessageRuleDetails.WaitsForCoach))]
    public void What_a_kind_cannot_do_is_refused_with_its_field(MessageKind kind, bool on, int timing, bool waits, string field) =>
        Assert.Equal([field], new MessageRuleDetails(on, timing, waits).Check(kind).Select(r => r.Field));

    [Fact]
    public void The_limits_of_encouragement_hold_over_notes_and_questions_alike() =>
        Assert.Equal([MessageKind.PracticeNudge, MessageKind.WeeklyCheckIn], Enum.GetValues<MessageKind>().Where(MessageTraits.IsEncouragement));
}
