using CoachOffice.Web.Features.Problem;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Core.Infrastructure;
using Microsoft.AspNetCore.Mvc.Filters;

namespace CoachOffice.Web.Shell.Security;

/// <summary>A form whose proof of origin no longer fits gets its own sentence, as the person has done nothing wrong.</summary>
internal sealed class FormExpiredFilter : IAlwaysRunResultFilter
{
    public void OnResultExecuting(ResultExecutingContext context)
    {
        if (context.Result is not IAntiforgeryValidationFailedResult) return;
        if (IsTooLarge(context.HttpContext))
        {
            context.Result = new StatusCodeResult(StatusCodes.Status413PayloadTooLarge);
            return;
        }

        Problems.Explain(context.HttpContext, Problems.FormExpired);
        context.Result = new StatusCodeResult(StatusCodes.Status400BadRequest);
    }

    /// <summary>A body over the limit is never read, so its proof of origin is not found either.</summary>
    private static bool IsTooLarge(HttpContext context) =>
        context.Request.ContentLength > context.Features.Get<IHttpMaxRequestBodySizeFeature>()?.MaxRequestBodySize;

    public void OnResultExecuted(ResultExecutedContext context)
    {
    }
}
