using Microsoft.AspNetCore.Authorization;

namespace CoachOffice.Web.Shell.Starting;

/// <summary>The door at which whatever strangers may not open waits for the first rulebook; and where the first answer is noticed.</summary>
internal static class StartDoor
{
    public static void UseStartDoor(this WebApplication app)
    {
        var first = app.Services.GetRequiredService<FirstAnswer>();
        var book = app.Services.GetRequiredService<ShippedBookStart>();
        app.Use(async (context, next) =>
        {
            if (!book.Settled.IsCompleted) await Wait(context, first, book);
            await next(context);
        });
    }

    private static async Task Wait(HttpContext context, FirstAnswer first, ShippedBookStart book)
    {
        if (context.GetEndpoint()?.Metadata.GetMetadata<IAllowAnonymous>() is null)
        {
            first.Given();
            await book.Settled.WaitAsync(context.RequestAborted);
        }
        else
        {
            context.Response.OnCompleted(() =>
            {
                first.Given();
                return Task.CompletedTask;
            });
        }
    }
}
