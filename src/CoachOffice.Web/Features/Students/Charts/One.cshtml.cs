using System.Security.Cryptography;
using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Insight;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Net.Http.Headers;

namespace CoachOffice.Web.Features.Students.Charts;

public sealed class OneModel(ReadMeasureHistory history, ReadPractice practice) : StudentCharts(history, practice)
{
    public MeasureHistory History { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(Guid id, string measure, string club) => await Find(id, measure, club) ? Page() : NotFound();

    /// <summary>The drawing alone; a browser that holds the same one is told so.</summary>
    public async Task<IActionResult> OnGetDrawingAsync(Guid id, string measure, string club, bool small)
    {
        if (await Stamp(id) is not { } stamp) return NotFound();
        var tag = new EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{ChartDrawing.Edition} {stamp} {Units.System} {measure} {club} {small}")))}\"");
        Response.Headers.CacheControl = "private, no-cache";
        if (Request.GetTypedHeaders().IfNoneMatch.Any(t => t.Compare(tag, useStrongComparison: false)))
        {
            Response.GetTypedHeaders().ETag = tag;
            return StatusCode(StatusCodes.Status304NotModified);
        }

        if (!await Find(id, measure, club)) return NotFound();
        return new FileContentResult(Encoding.UTF8.GetBytes(new ChartDrawing(History, Units, small).Svg()), "image/svg+xml") { EntityTag = tag };
    }

    private async Task<bool> Find(Guid id, string measure, string club)
    {
        if (!Terms.TryParse<Club>(club, out var played) || !await Look(id)) return false;
        var found = Histories.Measures.FirstOrDefault(m => m.Measure.Id.Value == measure && m.Club == played);
        if (found is null) return false;
        History = found;
        return true;
    }
}
