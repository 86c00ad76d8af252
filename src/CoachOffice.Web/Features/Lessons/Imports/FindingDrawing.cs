using CoachOffice.Domain.Measuring;
using CoachOffice.Web.Shell.Components;
using Microsoft.AspNetCore.Html;

namespace CoachOffice.Web.Features.Lessons.Imports;

/// <summary>A mean held against its band: strip, grade, and of how many swings. The number itself stands beside it, with the word for its side.</summary>
internal static class FindingDrawing
{
    public static IHtmlContent Html(Finding finding)
    {
        var strip = new StripDrawing { Name = finding.Measure.Name, Value = finding.Value.Value, Error = finding.StandardError, Unit = finding.Measure.Unit.Symbol, Wanted = finding.Range }.Markup();
        return new HtmlString($"""<span class="graded">{strip} {GradeText.Markup(finding.Grade, finding.Side)} <span class="small quiet">of {finding.Readings}</span></span>""");
    }
}
