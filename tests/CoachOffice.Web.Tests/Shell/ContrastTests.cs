using System.Text.RegularExpressions;

namespace CoachOffice.Web.Tests.Shell;

public sealed partial class ContrastTests
{
    private const double Text = 4.5;
    private const double Shape = 3.0;

    /// <summary>Which colour stands on which, and how much WCAG 2.2 AA asks: 1.4.3 for text, 1.4.11 for edges and marks.</summary>
    private static readonly (string On, string Under, double Least)[] Pairs =
    [
        .. from ground in (string[])["paper", "sheet", "sunk"] from ink in (string[])["ink", "ink-soft", "accent"] select (ink, ground, Text),
        .. from wash in (string[])["accent", "good", "near", "mild", "moderate", "marked"] select (wash, wash + "-wash", Text),
        .. from wash in (string[])["accent", "good", "near", "mild", "moderate", "marked"] select ("ink", wash + "-wash", Text),
        ("accent-ink", "accent", Text), ("accent-ink", "accent-strong", Text), ("accent-strong", "accent-wash", Text), ("ink-soft", "accent-wash", Text),
        ("marked", "paper", Text), ("marked", "sheet", Text), ("accent", "good-wash", Text), ("accent", "marked-wash", Text), ("accent", "near-wash", Text),
        ("edge", "paper", Shape), ("edge", "sheet", Shape), ("good", "sunk", Shape), ("ink", "good-wash", Shape),
    ];

    // Published check: WCAG relative luminance, Understanding 1.4.11 names #767676 as the passing border grey on white.
    [Theory]
    [InlineData("#000000", 21.0000)]
    [InlineData("#595959", 7.0047)]
    [InlineData("#767676", 4.5422)]
    [InlineData("#777777", 4.4781)]
    [InlineData("#949494", 3.0335)]
    [InlineData("#959595", 2.9953)]
    [InlineData("#0000FF", 8.5925)]
    [InlineData("#FF0000", 3.9985)]
    [InlineData("#00FF00", 1.3722)]
    public void The_formula_gives_the_known_ratios_on_white(string colour, double ratio) =>
        Assert.Equal(ratio, Contrast.Ratio(colour, "#ffffff"), 1e-3);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Every_pair_of_our_colours_is_readable(bool dark)
    {
        var colours = Tokens(dark);

        var poor = Pairs
            .Select(p => (p.On, p.Under, p.Least, Ratio: Contrast.Ratio(colours[p.On], colours[p.Under])))
            .Where(p => p.Ratio < p.Least)
            .Select(p => $"{p.On} on {p.Under}: {p.Ratio:0.00} of {p.Least:0.0}");

        Assert.Empty(poor);
    }

    private static Dictionary<string, string> Tokens(bool dark)
    {
        var css = File.ReadAllText(Path.Combine(Places.WebRoot, "css", "tokens.css"));
        var split = css.IndexOf("@media", StringComparison.Ordinal);
        var part = dark ? css[split..] : css[..split];
        return Token().Matches(part).ToDictionary(m => m.Groups["name"].Value, m => m.Groups["value"].Value, StringComparer.Ordinal);
    }

    [GeneratedRegex(@"--(?<name>[a-z-]+):\s*(?<value>#[0-9a-f]{3,6});", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Token();
}
