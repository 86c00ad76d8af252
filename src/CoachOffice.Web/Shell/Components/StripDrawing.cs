using System.Globalization;
using System.Text.Encodings.Web;
using CoachOffice.Domain.Measuring;
using Microsoft.AspNetCore.Html;

namespace CoachOffice.Web.Shell.Components;

/// <summary>The range strip as markup: band, mark and an error whisker of two standard errors. Written as text because sheets and drafts hold dozens of them; all by attributes, for style attributes are barred.</summary>
internal sealed record StripDrawing
{
    /// <summary>What was measured, for the text alternative.</summary>
    public required string Name { get; init; }

    public required double Value { get; init; }

    /// <summary>Standard error, same unit; 0 draws no whisker.</summary>
    public double Error { get; init; }

    public string Unit { get; init; } = "";

    public Limits? Wanted { get; init; }

    /// <summary>A narrower band to aim for.</summary>
    public Limits? Aim { get; init; }

    public IHtmlContent Html() => new HtmlString(Markup());

    public string Markup()
    {
        var scale = new StripScale(Wanted, Value, Error);
        var text = HtmlEncoder.Default.Encode(StripWords.For(Name, Value, Error, Unit, Wanted));
        return $"""<svg class="strip" viewBox="0 0 200 24" preserveAspectRatio="none" role="img" aria-label="{text}"><rect class="ground" x="0" y="8" width="200" height="8" />{Band("band", Wanted, scale)}{Band("aim", Aim, scale)}{Whisker(scale)}<rect class="mark" x="{N(Math.Clamp(scale.Of(Value) - 2, 0, 196))}" y="2" width="4" height="20" rx="2" /></svg>""";
    }

    private static string Band(string kind, Limits? band, StripScale scale) =>
        band is null ? "" : $"""<rect class="{kind}" x="{N(scale.LowOf(band))}" y="5" width="{N(Math.Max(1, Math.Round(scale.HighOf(band) - scale.LowOf(band), 2)))}" height="14" />""";

    private string Whisker(StripScale scale)
    {
        if (Error <= 0) return "";
        var (from, to) = (N(scale.Of(Value - 2 * Error)), N(scale.Of(Value + 2 * Error)));
        return $"""<path class="whisker" d="M{from} 12H{to}M{from} 9v6M{to} 9v6" />""";
    }

    private static string N(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
