using CoachOffice.Domain.Measuring;
using CoachOffice.Web.Shell.Components;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Html;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>A value of the sheet held against its band: strip, grade and, of several swings, their mean. Written as text because a sheet holds dozens.</summary>
internal static class GradeDrawing
{
    public static IHtmlContent Html(Finding finding, UnitText units) => new HtmlString(Markup(finding, units));

    public static string Markup(Finding finding, UnitText units)
    {
        var unit = finding.Measure.Unit;
        var strip = new StripDrawing { Name = finding.Measure.Name, Value = finding.Value.Value, Error = finding.StandardError, Unit = unit.Symbol, Wanted = finding.Range }.Markup();
        var mean = finding.Readings > 1 ? $"""<span class="small quiet">mean {units.Amount(finding.Value.Value, unit)} of {finding.Readings}</span>""" : "";
        return $"""<span class="graded">{strip} {GradeText.Markup(finding.Grade, finding.Side)} {mean}</span>""";
    }
}
