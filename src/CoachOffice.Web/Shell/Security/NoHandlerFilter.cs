using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;

namespace CoachOffice.Web.Shell.Security;

/// <summary>A page that has nothing to do for a request would be shown without what it shows: such a request is refused instead.</summary>
internal sealed class NoHandlerFilter : IPageFilter
{
    public void OnPageHandlerSelected(PageHandlerSelectedContext context)
    {
    }

    public void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        if (context.HandlerMethod is not null) return;
        var method = context.HttpContext.Request.Method;
        var reads = HttpMethods.IsGet(method) || HttpMethods.IsHead(method);
        if (!reads) context.Result = new StatusCodeResult(StatusCodes.Status405MethodNotAllowed);
        else if (context.ActionDescriptor.HandlerMethods.Any(h => HttpMethods.IsGet(h.HttpMethod))) context.Result = new NotFoundResult();
    }

    public void OnPageHandlerExecuted(PageHandlerExecutedContext context)
    {
    }
}
