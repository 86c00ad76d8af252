using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Lessons;
using CoachOffice.Web.Shell.Components;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Html;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>A value of the sheet held against its band: strip, grade and, of several swings, their mean. Written as text because a sheet holds dozens.</summary>
internal static class GradeDrawing
{
    public static IHtmlContent Html(Finding finding, UnitText units, IReadOnlyList<ApartSwing> apart) => new HtmlString(Markup(finding, units, apart));

    public static string Markup(Finding finding, UnitText units, IReadOnlyList<ApartSwing> apart)
    {
        var unit = finding.Measure.Unit;
        var strip = new StripDrawing { Name = finding.Measure.Name, Value = finding.Value.Value, Error = finding.StandardError, Unit = unit.Symbol, Wanted = finding.Range }.Markup();
        var mean = finding.Readings > 1 ? $"""<span class="small quiet">mean {units.Amount(finding.Value.Value, unit)} ± {units.Number(finding.StandardError, unit)} of {finding.Readings}</span>""" : "";
        return $"""<span class="graded">{strip} {GradeText.Markup(finding.Grade, finding.Side)} {mean}</span>{Apart(apart, units)}""";
    }

    private static string Apart(IReadOnlyList<ApartSwing> apart, UnitText units) =>
        apart.Count == 0 ? "" : $"""<p class="apart small">{string.Join(", ", apart.Select(a => $"swing {a.Swing} ({units.Amount(a.Value.Value, a.Value.Unit)})"))} stands apart from the others. It counts: look at it again, and take it off if it was read wrong.</p>""";
}
