using CoachOffice.Domain.Measuring;
using CsCheck;
using NodaTime;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class TrendTests
{
    private static readonly LocalDate First = new(2026, 1, 1);

    /// <summary>Series, score and slope: EPA QA/G-9S, box on the Mann-Kendall test for small samples; the chance 14/120 on one side: Kendall's table (.117).</summary>
    [Fact]
    public void A_published_series_of_five()
    {
        var trend = Of(5, 6, 11, 8, 10)!;

        Assert.Equal(6, trend.Score);
        Assert.Equal(2 * 14 / 120.0, trend.Chance, 1e-12);
        Assert.Equal(1.125, trend.SlopePerDay, 1e-12);
        Assert.Equal(8, trend.Middle.Value);
    }

    [Fact]
    public void Four_days_say_nothing() => Assert.Null(Of(1, 2, 3, 4));

    [Fact]
    public void Five_in_a_row_are_as_far_as_five_can_go() => Assert.Equal(2 / 120.0, Of(1, 2, 3, 4, 5)!.Chance, 1e-12);

    [Fact]
    public void Values_of_one_day_count_as_their_mean()
    {
        var trend = Trend.Of([(First, 1), (First, 3), (First.PlusDays(1), 3), (First.PlusDays(2), 4), (First.PlusDays(3), 5), (First.PlusDays(4), 6)])!;

        Assert.Equal((5, 1.0, 10), (trend.Days, trend.SlopePerDay, trend.Score));
    }

    [Fact]
    public void Level_values_go_nowhere() => Assert.Equal((0, 0.0, 1.0), (Of(4, 4, 4, 4, 4)!.Score, Of(4, 4, 4, 4, 4)!.SlopePerDay, Of(4, 4, 4, 4, 4)!.Chance));

    /// <summary>Without ties the variance is n (n - 1) (2n + 5) / 18, a tie of two takes 18/18 from it: for 1 2 2 3 4, S = 9, z = 8 / sqrt(15.667). By hand.</summary>
    [Fact]
    public void Equal_values_are_counted_by_the_corrected_normal() => Assert.Equal(0.04327, Of(1, 2, 2, 3, 4)!.Chance, 1e-4);

    [Fact]
    public void One_wild_day_does_not_turn_the_line() => Assert.Equal(1, Of(1, 2, 3, 4, 90, 6, 7)!.SlopePerDay, 1e-12);

    [Fact]
    public void Upside_down_is_the_same_the_other_way() => Gen.Double[-50, 50].Array[5, 30].Sample(values =>
    {
        var (up, down) = (Of(values)!, Of([.. values.Select(v => -v)])!);
        Assert.Equal((up.Score, up.SlopePerDay), (-down.Score, -down.SlopePerDay));
        Assert.Equal(up.Chance, down.Chance, 1e-12);
        Assert.InRange(up.Chance, 0, 1);
    });

    /// <summary>The exact chance against counting all 720 orders of six values.</summary>
    [Fact]
    public void The_exact_chance_is_what_counting_gives()
    {
        var scores = Orders([1, 2, 3, 4, 5, 6]).Select(o => Math.Abs(Of([.. o])!.Score)).ToList();
        foreach (var order in Orders([1, 2, 3, 4, 5, 6]).Where((_, i) => i % 37 == 0))
        {
            var trend = Of([.. order])!;
            Assert.Equal(scores.Count(s => s >= Math.Abs(trend.Score)) / 720.0, trend.Chance, 1e-12);
        }
    }

    private static Trend? Of(params double[] values) => Trend.Of(values.Select((v, i) => (First.PlusDays(i), v)));

    private static IEnumerable<IEnumerable<double>> Orders(IReadOnlyList<double> values) =>
        values.Count == 0 ? [[]] : values.SelectMany((v, i) => Orders([.. values.Take(i), .. values.Skip(i + 1)]).Select(rest => rest.Prepend(v)));
}
