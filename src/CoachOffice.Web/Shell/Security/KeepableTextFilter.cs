using CoachOffice.Web.Features.Problem;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;

namespace CoachOffice.Web.Shell.Security;

/// <summary>A form with the character zero in a text is refused whole: one of the databases cannot keep it, and no keyboard types it.</summary>
internal sealed class KeepableTextFilter : IAsyncPageFilter
{
    private static readonly ProblemText Unkeepable = new(
        "A text that cannot be kept",
        "A field holds a character no database can keep. Go back, type that text instead of pasting it, and send it again; nothing was saved.");

    public Task OnPageHandlerSelectionAsync(PageHandlerSelectedContext context) => Task.CompletedTask;

    public async Task OnPageHandlerExecutionAsync(PageHandlerExecutingContext context, PageHandlerExecutionDelegate next)
    {
        if (!await HoldsZero(context.HttpContext.Request))
        {
            await next();
            return;
        }

        Problems.Explain(context.HttpContext, Unkeepable);
        context.Result = new StatusCodeResult(StatusCodes.Status400BadRequest);
    }

    // The problem page stands in for a request whose form may be unreadable.
    private static async Task<bool> HoldsZero(HttpRequest request) =>
        request.HasFormContentType && !request.Path.StartsWithSegments("/problem", StringComparison.OrdinalIgnoreCase)
        && (await request.ReadFormAsync(request.HttpContext.RequestAborted)).Any(f => f.Value.Any(v => v?.Contains('\0') == true));
}
