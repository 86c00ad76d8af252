using CoachOffice.Domain.Ledger;

namespace CoachOffice.Domain.Tests.Ledger;

public sealed class TaxRuleTests
{
    private static readonly TaxRule Inside = new(TaxMode.Inclusive, Rounding.HalfUp, TaxScope.PerLine);
    private static readonly TaxRule OnTop = new(TaxMode.Exclusive, Rounding.HalfUp, TaxScope.PerLine);

    // The VAT fraction of VATA 1994 s 19: 240 gross at 20 % holds 40, 235 at 17.5 % 35, 210 at 5 % 10 (bookkeepers.org.uk; croneri VAT reporter 14-200).
    // Australia: price / 11 (ATO EM 6.2). New Zealand 3/23 (from memory). 100.00 and 0.99 are computed.
    [Theory]
    [InlineData(24000, 2000, 4000)]
    [InlineData(23500, 1750, 3500)]
    [InlineData(21000, 500, 1000)]
    [InlineData(2300, 1500, 300)]
    [InlineData(1100, 1000, 100)]
    [InlineData(10000, 2000, 1667)]
    [InlineData(99, 2000, 17)]
    public void Tax_is_found_inside_a_price(long gross, int basisPoints, long tax)
    {
        var line = Inside.Of(Line(gross, basisPoints));

        Assert.Equal((tax, gross - tax, gross), (line.Tax.MinorUnits, line.Net.MinorUnits, line.Gross.MinorUnits));
    }

    [Fact]
    public void Sixteen_and_a_half_cents_go_by_the_rule() =>
        Assert.Equal([17, 16, 16], new[] { Rounding.HalfUp, Rounding.HalfEven, Rounding.HalfDown }.Select(r => (Inside with { Rounding = r }).Of(Line(99, 2000)).Tax.MinorUnits));

    // A New Tax System (Goods and Services Tax) Act 1999 (Australia) s 9-90(1): A$1.25 at 10 % is 0.125, half a cent goes up.
    [Fact]
    public void Australia_rounds_half_a_cent_up() => Assert.Equal(13, OnTop.Of(Line(125, 1000)).Tax.MinorUnits);

    // GST Act (New Zealand) s 19O: half a cent or less may be disregarded: NZ$0.10 at 15 % is 0.015.
    [Fact]
    public void New_Zealand_may_let_half_a_cent_go() => Assert.Equal(1, (OnTop with { Rounding = Rounding.HalfDown }).Of(Line(10, 1500)).Tax.MinorUnits);

    // s 9-90(2): added unrounded and rounded once, or each by itself; three lines of tax 0.014.
    [Fact]
    public void Three_small_lines_differ_by_how_often_is_rounded()
    {
        TaxLine[] lines = [Line(14, 1000), Line(14, 1000), Line(14, 1000)];

        Assert.Equal(3, OnTop.Of(lines).Sum(l => l.Tax.MinorUnits));
        var once = (OnTop with { Scope = TaxScope.PerDocument }).Of(lines);
        Assert.Equal([2, 1, 1], once.Select(l => l.Tax.MinorUnits));
        Assert.All(once, l => Assert.Equal(14, l.Net.MinorUnits));
    }

    [Fact]
    public void Rates_are_rounded_each_for_itself_and_lines_keep_their_order()
    {
        var once = (Inside with { Scope = TaxScope.PerDocument }).Of([Line(99, 2000), Line(1100, 1000), Line(99, 2000), Line(500, 0)]);

        Assert.Equal([17, 100, 16, 0], once.Select(l => l.Tax.MinorUnits));
        Assert.Equal([99, 1100, 99, 500], once.Select(l => l.Gross.MinorUnits));
    }

    [Fact]
    public void Lines_for_nothing_have_no_tax() =>
        Assert.All((OnTop with { Scope = TaxScope.PerDocument }).Of([Line(0, 2000), Line(0, 2000)]), l => Assert.True(l.Gross.IsZero));

    [Theory]
    [InlineData(2000, "20\u00A0%")]
    [InlineData(1750, "17.5\u00A0%")]
    [InlineData(550, "5.5\u00A0%")]
    [InlineData(805, "8.05\u00A0%")]
    [InlineData(0, "0\u00A0%")]
    public void A_rate_reads_as_people_write_it(int basisPoints, string text) => Assert.Equal(text, new TaxRate(basisPoints).ToString());

    private static TaxLine Line(long price, int basisPoints) => new("Lesson", new Money(price, Currency.Of("EUR")), new TaxRate(basisPoints));
}
