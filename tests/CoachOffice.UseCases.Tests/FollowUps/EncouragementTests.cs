using CoachOffice.UseCases.FollowUps;
using CsCheck;
using NodaTime;

namespace CoachOffice.UseCases.Tests.FollowUps;

public sealed class EncouragementTests
{
    private static readonly LocalDate Today = new(2026, 3, 16);

    [Fact]
    public void With_nothing_sent_lately_one_may_go_today() => Assert.Equal(Today, Encouragement.EarliestDay(Today, [], []));

    [Fact]
    public void Never_twice_on_one_day() => Assert.Equal(Today.PlusDays(1), Encouragement.EarliestDay(Today, [], [Today]));

    [Fact]
    public void A_third_in_a_week_waits_for_the_week_to_pass()
    {
        LocalDate[] sent = [Today.PlusDays(-4), Today.PlusDays(-1)];

        Assert.Equal(Today.PlusDays(3), Encouragement.EarliestDay(Today, sent, sent));
    }

    [Fact]
    public void Whatever_went_out_before_no_seven_days_hold_more_than_two() =>
        Gen.Int[1, 60].Array[0, 30].Sample(steps =>
        {
            var sent = new List<LocalDate>();
            foreach (var step in steps) sent.Add(Encouragement.EarliestDay((sent.Count == 0 ? Today : sent[^1]).PlusDays(step % 3), sent, sent));
            return sent.All(day => sent.Count(other => other > day.PlusDays(-7) && other <= day) <= Encouragement.MostInAWeek);
        });
}
