using CoachOffice.Domain.Access;

namespace CoachOffice.Domain.Tests.Access;

public sealed class ActorTests
{
    [Theory]
    [InlineData(Policy.Owner, true, true, true)]
    [InlineData(Policy.Coach, true, true, false)]
    [InlineData(Policy.Desk, false, true, false)]
    [InlineData(null, false, false, false)]
    public void Who_may_teach_keep_students_and_own(Policy? policy, bool teach, bool keep, bool own)
    {
        var actor = new Actor(null, "Ida Feld", policy);
        Assert.Equal((teach, keep, own), (actor.MayTeach, actor.MayKeepStudents, actor.MayOwn));
    }

    [Fact]
    public void The_clock_and_a_student_behind_a_link_have_no_account_and_no_rights()
    {
        Assert.Equal(new Actor(null, "the clock", null), Actor.Clock);
        Assert.Equal(new Actor(null, "the student", null), Actor.Student);
    }
}
