using CoachOffice.Domain.Ledger;
using CsCheck;

namespace CoachOffice.Domain.Tests.Ledger;

public sealed class AllocationTests
{
    private static readonly Gen<(long Total, long[] Weights)> Cases =
        Gen.Select(Gen.Long[-1_000_000, 1_000_000], Gen.Long[0, 1_000].Array[1, 12].Where(w => w.Sum() > 0), (total, weights) => (total, weights));

    // Foemmel's conundrum (Fowler, Patterns of Enterprise Application Architecture, Money, p. 495) and 10.00 in three parts (same pattern, remainder to the first).
    [Theory]
    [InlineData(5, new long[] { 3, 7 }, new long[] { 2, 3 })]
    [InlineData(1000, new long[] { 1, 1, 1 }, new long[] { 334, 333, 333 })]
    [InlineData(1003, new long[] { 50, 50 }, new long[] { 502, 501 })]
    [InlineData(90, new long[] { 70, 30 }, new long[] { 63, 27 })]
    [InlineData(7, new long[] { 50, 30, 20 }, new long[] { 4, 2, 1 })]
    [InlineData(42, new long[] { 247, 185, 459, 400, 413 }, new long[] { 6, 5, 11, 10, 10 })]
    public void Divides_as_published(long total, long[] weights, long[] parts) => Assert.Equal(parts, By(total, weights));

    // Largest remainder (Hamilton), census of 1790, 60 seats: VA MA PA NC NY MD CT SC NJ NH VT GA KY RI DE (electowiki.org, Hamilton method, oldid 9372).
    [Fact]
    public void Divides_sixty_seats_by_the_census_of_1790() => Assert.Equal(
        [11, 8, 7, 6, 6, 5, 4, 3, 3, 2, 1, 1, 1, 1, 1],
        By(60, [630560, 475327, 432879, 353523, 331589, 278514, 236841, 206236, 179570, 141822, 85533, 70835, 68705, 68446, 55540]));

    [Fact]
    public void Nothing_is_lost_and_nobody_is_more_than_a_unit_away_from_their_quota() => Cases.Sample(c =>
    {
        var parts = By(c.Total, c.Weights);
        Assert.Equal(c.Total, parts.Sum());
        Assert.All(parts.Zip(c.Weights), p => Assert.True(Int128.Abs(((Int128)p.First * c.Weights.Sum()) - ((Int128)c.Total * p.Second)) < c.Weights.Sum()));
    });

    [Fact]
    public void A_negative_total_mirrors_the_positive() => Cases.Sample(c => Assert.Equal(By(c.Total, c.Weights).Select(p => -p), By(-c.Total, c.Weights)));

    [Fact]
    public void Another_order_of_weights_is_another_order_of_parts_but_for_ties() =>
        Gen.Select(Cases, Gen.Int).Sample((c, seed) =>
        {
            var sum = (Int128)c.Weights.Sum();
            var rests = c.Weights.Select(w => Int128.Abs(c.Total) * w % sum).ToList();
            if (rests.Distinct().Count() < rests.Count) return;
            var order = Enumerable.Range(0, c.Weights.Length).OrderBy(i => HashCode.Combine(i, seed)).ToArray();
            var parts = By(c.Total, c.Weights);
            Assert.Equal(order.Select(i => parts[i]), By(c.Total, [.. order.Select(i => c.Weights[i])]));
        });

    [Fact]
    public void Weights_that_say_nothing_are_a_defect()
    {
        Assert.Throws<ArgumentException>(() => By(10, []));
        Assert.Throws<ArgumentException>(() => By(10, [0, 0]));
        Assert.Throws<ArgumentException>(() => By(10, [2, -1]));
    }

    private static long[] By(long total, long[] weights) => [.. Allocation.By(new Money(total, Currency.Of("EUR")), weights).Select(m => m.MinorUnits)];
}
