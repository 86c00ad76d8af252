using System.Globalization;
using CoachOffice.Data.Media;
using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Media;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Media;

/// <summary>Clips in parts, by the open tus protocol 1.0 (core, creation and termination; https://tus.io/protocols/resumable-upload): a sender that was cut off asks how far it is and goes on from there.</summary>
internal static class ClipUploads
{
    public const string Resumable = "Tus-Resumable";
    public const string Version = "1.0.0";
    private const string UploadOffset = "Upload-Offset";
    private const string UploadLength = "Upload-Length";
    private const string PartType = "application/offset+octet-stream";
    private const int LargestPart = 600_000_000;

    public static void MapClipUploads(this WebApplication app)
    {
        var uploads = app.MapGroup("/lessons/{id:guid}/clips/uploads").RequireAuthorization(OfficePolicies.Teach);
        uploads.AddEndpointFilter(Speak);
        uploads.MapMethods("", [HttpMethods.Options], static (MediaSettings settings, HttpContext context) => Says(context, settings));
        uploads.MapPost("", Create);
        uploads.MapMethods("/{upload:guid}", [HttpMethods.Head], Ask);
        uploads.MapMethods("/{upload:guid}", [HttpMethods.Patch], Take).WithMetadata(new RequestSizeLimitAttribute(LargestPart));
        uploads.MapDelete("/{upload:guid}", static (Guid id, Guid upload, DropClipArrival drop, HttpContext context) => Answer(drop.Of(LessonId.From(id), upload, context.User.AsActor()), StatusCodes.Status204NoContent, context, _ => { }));
    }

    private static async Task<IResult> Create(Guid id, BeginClip begin, HttpContext context)
    {
        if (Number(context, UploadLength) is not { } length) return Results.Text($"{UploadLength} is missing.", statusCode: StatusCodes.Status400BadRequest);
        var begun = await begin.For(LessonId.From(id), length, context.User.AsActor(), context.RequestAborted);
        return Answer(begun, StatusCodes.Status201Created, context, a => context.Response.Headers.Location = $"/lessons/{id}/clips/uploads/{a.Id}");
    }

    private static IResult Ask(Guid id, Guid upload, FindClipArrival find, HttpContext context) =>
        Answer(find.Of(LessonId.From(id), upload, context.User.AsActor()), StatusCodes.Status200OK, context, a =>
        {
            context.Response.Headers.CacheControl = "no-store";
            context.Response.Headers[UploadLength] = Text(a.Length);
            context.Response.Headers[UploadOffset] = Text(a.Offset);
        });

    private static async Task<IResult> Take(Guid id, Guid upload, TakeClipPart take, HttpContext context)
    {
        if (context.Request.ContentType != PartType) return Results.Text($"A part is sent as {PartType}.", statusCode: StatusCodes.Status415UnsupportedMediaType);
        if (Number(context, UploadOffset) is not { } offset) return Results.Text($"{UploadOffset} is missing.", statusCode: StatusCodes.Status400BadRequest);
        var taken = await take.Of(LessonId.From(id), upload, offset, context.Request.Body, context.User.AsActor(), context.RequestAborted);
        return Answer(taken, StatusCodes.Status204NoContent, context, a => context.Response.Headers[UploadOffset] = Text(a.Offset));
    }

    private static IResult Says(HttpContext context, MediaSettings settings)
    {
        var headers = context.Response.Headers;
        (headers["Tus-Version"], headers["Tus-Extension"], headers["Tus-Max-Size"]) = (Version, "creation,termination", Text(settings.LargestClip));
        return Results.NoContent();
    }

    /// <summary>Both sides say which protocol they speak, and whoever changes something proves that our own page sent it.</summary>
    private static async ValueTask<object?> Speak(EndpointFilterInvocationContext invocation, EndpointFilterDelegate next)
    {
        var context = invocation.HttpContext;
        context.Response.Headers[Resumable] = Version;
        if (HttpMethods.IsOptions(context.Request.Method)) return await next(invocation);
        if (context.Request.Headers[Resumable] != Version)
        {
            context.Response.Headers["Tus-Version"] = Version;
            return Results.Text($"This office speaks version {Version}.", statusCode: StatusCodes.Status412PreconditionFailed);
        }

        if (HttpMethods.IsHead(context.Request.Method) || await context.RequestServices.GetRequiredService<IAntiforgery>().IsRequestValidAsync(context)) return await next(invocation);
        return Results.Text("The page was open for too long. Open it again; what has arrived stays.", statusCode: StatusCodes.Status403Forbidden);
    }

    private static IResult Answer(Outcome<ClipArrival> outcome, int status, HttpContext context, Action<ClipArrival> say)
    {
        if (!outcome.TryGet(out var arrival)) return Results.Text(outcome.Refusals[0].Sentence, statusCode: StatusOf(outcome.Refusals[0].Code));
        say(arrival);
        return Results.StatusCode(status);
    }

    private static int StatusOf(string code) => code switch
    {
        NotAllowed.Code => StatusCodes.Status403Forbidden,
        "clip-offset" => StatusCodes.Status409Conflict,
        "clip-busy" => StatusCodes.Status423Locked,
        "clip-too-large" or "media-quota" => StatusCodes.Status413PayloadTooLarge,
        _ => code.EndsWith("not-found", StringComparison.Ordinal) ? StatusCodes.Status404NotFound : StatusCodes.Status422UnprocessableEntity,
    };

    private static long? Number(HttpContext context, string header) =>
        long.TryParse(context.Request.Headers[header], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}
