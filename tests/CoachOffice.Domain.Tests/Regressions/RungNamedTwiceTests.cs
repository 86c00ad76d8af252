using CoachOffice.Domain.Tests.Plans;

namespace CoachOffice.Domain.Tests.Regressions;

public sealed class RungNamedTwiceTests
{
    // All rungs and one of them again was taken as an order; the plan then had a second, a third and a fourth rung and no first.
    [Fact]
    public void An_order_that_names_a_rung_twice_is_none()
    {
        var plan = PlanTests.Proposed();
        Assert.Throws<ArgumentException>(() => plan.Reorder([FixedIds.Of(3), FixedIds.Of(1), FixedIds.Of(2), FixedIds.Of(3)]));
        Assert.Equal([1, 2, 3], plan.Stages.Select(s => s.Order));
    }
}
