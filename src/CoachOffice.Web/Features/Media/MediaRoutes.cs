using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Media;
using CoachOffice.Web.Shell.Security;
using Microsoft.Net.Http.Headers;

namespace CoachOffice.Web.Features.Media;

/// <summary>The bytes of stills and clips. They are asked for again each time, since consent can end; a browser that holds the same ones is told so.</summary>
internal static class MediaRoutes
{
    public static void MapMedia(this WebApplication app)
    {
        var bytes = app.MapGroup("/media").RequireAuthorization(OfficePolicies.Teach).WithSecurityHeadersPolicy(SecurityHeaders.Media);
        bytes.MapGet("/{id:guid}", static (Guid id, OpenMedia open, HttpContext context) => Send(id, small: false, open, context));
        bytes.MapGet("/{id:guid}/small", static (Guid id, OpenMedia open, HttpContext context) => Send(id, small: true, open, context));
    }

    private static async Task<IResult> Send(Guid id, bool small, OpenMedia open, HttpContext context)
    {
        var opened = await open.Of(MediaId.From(id), small, context.User.AsActor(), context.RequestAborted);
        if (!opened.TryGet(out var media)) return Results.StatusCode(opened.Refusals[0].Code == NotAllowed.Code ? StatusCodes.Status403Forbidden : StatusCodes.Status404NotFound);
        context.Response.Headers.CacheControl = "private, no-cache";
        context.Response.Headers.ContentDisposition = new ContentDispositionHeaderValue("inline") { FileName = media.Name }.ToString();
        return Results.Stream(media.Bytes, media.Format.ContentType(), entityTag: new EntityTagHeaderValue($"\"{media.Sha256}\""), enableRangeProcessing: media.Format.Kind() == MediaKind.Clip);
    }
}
