using CoachOffice.Web.Features.Problem;
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
        Problems.Explain(context.HttpContext, Problems.FormExpired);
        context.Result = new StatusCodeResult(StatusCodes.Status400BadRequest);
    }

    public void OnResultExecuted(ResultExecutedContext context)
    {
    }
}
