using CoachOffice.Data;
using Microsoft.AspNetCore.Diagnostics;

namespace CoachOffice.Web.Features.Problem;

/// <summary>The sentences for everything that is not a page.</summary>
internal static class Problems
{
    private static readonly object Key = new();
    private static readonly string[] Private = ["/my-plan", "/p", "/stop"];

    public static ProblemText FormExpired { get; } = new(
        "That form was too old to send",
        "Nothing was saved, and nothing you typed is lost: go back with your browser's back button, copy what you need, reload that page and send it again. This happens after signing in anew, or when cookies are blocked.");

    /// <summary>Leaves a more precise sentence for the page that will answer this request.</summary>
    public static void Explain(HttpContext context, ProblemText problem) => context.Items[Key] = problem;

    public static ProblemText Of(HttpContext context, int status) => For(Path(context), context.Items[Key] as ProblemText ?? Known(context) ?? Plain(status));

    private static ProblemText? Known(HttpContext context) =>
        context.Features.Get<IExceptionHandlerFeature>() is { Error: { } failure } && DatabaseFaults.IsFull(failure)
            ? new("The disk is full", "There is no room left where the office keeps its data, so nothing was saved. Go back with your browser's back button to what you typed, have room made on the disk, then send it again.")
            : null;

    // Behind a private link there is no office to go on to.
    private static ProblemText For(PathString path, ProblemText problem) =>
        Private.Any(p => path.StartsWithSegments(p, StringComparison.OrdinalIgnoreCase)) ? problem with { ForStudent = true } : problem;

    private static PathString Path(HttpContext context) =>
        context.Features.Get<IStatusCodeReExecuteFeature>()?.OriginalPath ?? context.Features.Get<IExceptionHandlerPathFeature>()?.Path ?? context.Request.Path;

    private static ProblemText Plain(int status) =>
        status switch
        {
            400 => new("That request could not be read", "Something in the form or the address was not as expected. Go back, check what you entered, and send it again; nothing was saved."),
            403 => new("Not open to your role", "Your account may not see or do this. Ask the owner of the practice if you need it."),
            404 => new("Nothing here", "This page does not exist, or what it showed was removed. Use the menu to go on."),
            405 => new("Not that way", "This page does not take what was sent. Open it from the menu and use its own buttons; nothing was saved."),
            413 => new("Too much at once", "What you sent is larger than the 2 MB this office takes at once. Send less, or a smaller file; nothing was saved."),
            429 => new("Too many tries", "There were too many tries from this address. Wait one minute, then try again."),
            >= 500 => new("Something failed on our side", "What you sent was not saved, or was saved whole: nothing is left half done. Go back, look whether it is there, and try again."),
            _ => new("That did not work", "The request was refused. Go back and try again; nothing was saved."),
        };
}
