using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Net.Http.Headers;

namespace CoachOffice.Web.Features.Students.Charts;

/// <summary>Answers with a drawing known by what it depends on: to a browser that holds it with nothing, else from those made lately or newly made.</summary>
internal sealed class DrawingAnswer(KeptDrawings kept, HttpContext context)
{
    /// <param name="depends">Everything the drawing depends on, its reader's rights not: those were asked before.</param>
    /// <param name="make">Draws it; null when there is no such measure.</param>
    public async Task<IActionResult> Of(string depends, Func<Task<ChartDrawing?>> make)
    {
        var tag = new EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{ChartDrawing.Edition} {depends}")))}\"");
        context.Response.Headers.CacheControl = "private, no-cache";
        if (context.Request.GetTypedHeaders().IfNoneMatch.Any(t => t.Compare(tag, useStrongComparison: false)))
        {
            context.Response.GetTypedHeaders().ETag = tag;
            return new StatusCodeResult(StatusCodes.Status304NotModified);
        }

        var key = tag.Tag.Value!;
        if ((kept.Find(key) ?? (await make() is { } drawing ? kept.Keep(key, Encoding.UTF8.GetBytes(drawing.Svg())) : null)) is not { } svg) return new NotFoundResult();
        return new FileContentResult(svg, "image/svg+xml") { EntityTag = tag };
    }
}
