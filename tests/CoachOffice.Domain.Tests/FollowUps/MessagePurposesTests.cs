using CoachOffice.Domain.FollowUps;

namespace CoachOffice.Domain.Tests.FollowUps;

public sealed class MessagePurposesTests
{
    [Fact]
    public void Every_kind_has_a_purpose()
    {
        foreach (var kind in Enum.GetValues<MessageKind>()) Assert.True(Enum.IsDefined(MessagePurposes.Of(kind)), $"{kind}");
    }

    [Fact]
    public void What_is_for_the_practice_itself_is_stopped_by_no_student_and_every_other_purpose_is_offered()
    {
        Assert.Equal(Enum.GetValues<MessagePurpose>().Except([MessagePurpose.Office]).Order(), MessagePurposes.OfStudents.Order());
        Assert.Empty(MessagePurposes.EndedBy(MessagePurpose.Office));
    }

    [Theory]
    [InlineData(MessageKind.BookingInvitation)]
    [InlineData(MessageKind.BookingCancelled)]
    [InlineData(MessageKind.Receipt)]
    [InlineData(MessageKind.Statement)]
    [InlineData(MessageKind.ReviewReceived)]
    public void What_answers_a_deed_cannot_be_stopped(MessageKind kind) => Assert.DoesNotContain(kind, Enum.GetValues<MessagePurpose>().SelectMany(MessagePurposes.EndedBy));

    [Fact]
    public void Encouragement_and_the_plan_are_apart()
    {
        Assert.Superset(new HashSet<MessageKind> { MessageKind.PracticeNudge, MessageKind.RetestPrompt, MessageKind.SecondLook }, MessagePurposes.EndedBy(MessagePurpose.Encouragement).ToHashSet());
        Assert.Equal([MessageKind.PlanDelivery], MessagePurposes.EndedBy(MessagePurpose.Plan));
        Assert.Contains(MessageKind.WaitingOffer, MessagePurposes.EndedBy(MessagePurpose.Appointment));
    }
}
