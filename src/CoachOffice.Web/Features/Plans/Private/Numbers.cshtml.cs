using System.Security.Cryptography;
using System.Text;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Insight;
using CoachOffice.Web.Features.Students.Charts;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Net.Http.Headers;

namespace CoachOffice.Web.Features.Plans.Private;

/// <summary>The student's own numbers, without the trade's words.</summary>
public sealed class NumbersModel(ReadMyNumbers numbers, ReadPractice practice) : LinkPage
{
    internal IReadOnlyList<MeasureHistory> Numbers { get; private set; } = [];

    internal UnitText Units { get; private set; } = UnitText.Metric;

    public async Task<IActionResult> OnGetAsync()
    {
        Units = UnitText.Of(await practice.Now());
        if (await numbers.For(Pass) is not { } mine) return NotFound();
        Numbers = mine;
        return Page();
    }

    /// <summary>One measure's drawing.</summary>
    public async Task<IActionResult> OnGetDrawingAsync(string measure)
    {
        if (await numbers.StampFor(Pass) is not { } stamp) return NotFound();
        Units = UnitText.Of(await practice.Now());
        var tag = new EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{ChartDrawing.Edition} {stamp} {Pass.PlanId} {Units.System} {measure} mine")))}\"");
        Response.Headers.CacheControl = "private, no-cache";
        if (Request.GetTypedHeaders().IfNoneMatch.Any(t => t.Compare(tag, useStrongComparison: false)))
        {
            Response.GetTypedHeaders().ETag = tag;
            return StatusCode(StatusCodes.Status304NotModified);
        }

        return await numbers.For(Pass) is { } mine && mine.FirstOrDefault(m => m.Measure.Id.Value == measure) is { } history
            ? new FileContentResult(Encoding.UTF8.GetBytes(new ChartDrawing(history, Units, isSmall: true).Svg()), "image/svg+xml") { EntityTag = tag }
            : NotFound();
    }
}
