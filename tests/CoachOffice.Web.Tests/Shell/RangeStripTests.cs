using Bunit;
using CoachOffice.Domain.Measuring;
using CoachOffice.Web.Shell.Components;

namespace CoachOffice.Web.Tests.Shell;

public sealed class RangeStripTests : BunitContext
{
    private static double Of(IRenderedComponent<RangeStrip> strip, string css, string attribute) =>
        double.Parse(strip.Find(css).GetAttribute(attribute)!, System.Globalization.CultureInfo.InvariantCulture);

    private IRenderedComponent<RangeStrip> Strip(double value, double error, Limits? wanted) =>
        Render<RangeStrip>(p => p.Add(s => s.Name, "Shoulder turn").Add(s => s.Value, value).Add(s => s.Error, error).Add(s => s.Unit, "deg").Add(s => s.Wanted, wanted));

    [Fact]
    public void A_value_below_its_band_is_marked_left_of_it_and_said_in_words()
    {
        var strip = Strip(66, 3, new Limits(73, 103));

        Assert.True(Of(strip, ".mark", "x") < Of(strip, ".band", "x"));
        Assert.Equal("Shoulder turn: 66 deg, give or take 6; wanted 73 to 103 deg, 7 deg below it.", strip.Find("svg").GetAttribute("aria-label"));
    }

    [Fact]
    public void A_value_inside_lies_within_the_band()
    {
        var strip = Strip(90, 0, new Limits(73, 103));

        var mark = Of(strip, ".mark", "x") + 2;
        Assert.InRange(mark, Of(strip, ".band", "x"), Of(strip, ".band", "x") + Of(strip, ".band", "width"));
        Assert.Empty(strip.FindAll(".whisker"));
        Assert.EndsWith("wanted 73 to 103 deg, inside it.", strip.Find("svg").GetAttribute("aria-label"), StringComparison.Ordinal);
    }

    [Fact]
    public void An_open_band_runs_to_the_end_of_the_strip()
    {
        var strip = Strip(110, 4, new Limits(null, 106));

        Assert.Equal(0, Of(strip, ".band", "x"));
        Assert.Contains("wanted 106 deg or less, 4 deg above it", strip.Find("svg").GetAttribute("aria-label"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1e6)]
    [InlineData(-40)]
    public void Without_a_band_everything_stays_on_the_strip(double value)
    {
        var strip = Strip(value, 0.5, null);

        Assert.Empty(strip.FindAll(".band"));
        Assert.InRange(Of(strip, ".mark", "x"), 0, 200);
        Assert.Contains("no wanted range", strip.Find("svg").GetAttribute("aria-label"), StringComparison.Ordinal);
    }

    [Fact]
    public void No_style_attribute_is_used_because_the_content_policy_bars_it() =>
        Assert.DoesNotContain("style=", Strip(66, 3, new Limits(73, 103)).Markup, StringComparison.Ordinal);
}
