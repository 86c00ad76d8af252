using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Tests.Access;

public sealed class PrivateLinkTests
{
    private static readonly Guid Id = new("00000000-0000-0000-0000-000000000001");
    private static readonly StudentId Student = StudentId.From(new Guid("00000000-0000-0000-0000-000000000002"));
    private static readonly PlanId Plan = PlanId.From(new Guid("00000000-0000-0000-0000-000000000003"));
    private static readonly Instant Issued = Instant.FromUtc(2026, 5, 4, 10, 0);
    private static readonly Instant Ends = Issued + Duration.FromDays(60);

    [Fact]
    public void It_opens_one_plan_of_one_student()
    {
        var link = Link();
        Assert.Equal((Id, "00ff", Student, Plan), (link.Id, link.TokenSha256, link.StudentId, link.PlanId));
        Assert.Equal((Issued, Ends, LinkPurpose.Plan), (link.IssuedAt, link.ExpiresAt, link.Purpose));
    }

    [Fact]
    public void It_is_open_until_the_moment_it_expires()
    {
        Assert.True(Link().IsOpenAt(Ends - Duration.Epsilon));
        Assert.False(Link().IsOpenAt(Ends));
    }

    [Fact]
    public void Revoking_ends_it_for_good_and_the_first_time_counts()
    {
        var link = Link();
        link.Revoke(Issued);
        link.Revoke(Ends);
        Assert.Equal((false, Issued), (link.IsOpenAt(Issued), link.RevokedAt!.Value));
    }

    [Fact]
    public void Each_use_is_noted()
    {
        var link = Link();
        link.Opened(Issued);
        link.Opened(Ends);
        Assert.Equal(Ends, link.LastOpenedAt);
    }

    private static PrivateLink Link() => PrivateLink.Issue(Id, "00ff", Student, Plan, new Interval(Issued, Ends));
}
