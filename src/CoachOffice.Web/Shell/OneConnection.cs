using CoachOffice.Data;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Web.Shell;

/// <summary>Keeps one connection open while a page gathers what it shows. Opening one a query costs more than most of the queries; it is given back before the page is written to a slow reader.</summary>
internal sealed class OneConnection(OfficeDb db) : IAsyncPageFilter
{
    public Task OnPageHandlerSelectionAsync(PageHandlerSelectedContext context) => Task.CompletedTask;

    public async Task OnPageHandlerExecutionAsync(PageHandlerExecutingContext context, PageHandlerExecutionDelegate next)
    {
        ArgumentNullException.ThrowIfNull(next);
        if (!Looks(context) || context.HttpContext.User.Identity?.IsAuthenticated != true)
        {
            await next();
            return;
        }

        await db.Database.OpenConnectionAsync(context.HttpContext.RequestAborted);
        try
        {
            await next();
        }
        finally
        {
            await db.Database.CloseConnectionAsync();
        }
    }

    private static bool Looks(PageHandlerExecutingContext context) =>
        context.HandlerMethod is { } handler && (HttpMethods.IsGet(context.HttpContext.Request.Method) || handler.MethodInfo.IsDefined(typeof(AsksOnlyAttribute), inherit: false));
}
