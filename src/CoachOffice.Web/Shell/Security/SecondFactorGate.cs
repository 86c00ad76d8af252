using CoachOffice.UseCases.Access;

namespace CoachOffice.Web.Shell.Security;

/// <summary>Where the practice asks everyone for a second step, a session without one reaches its set-up and the way out, nothing else.</summary>
internal static class SecondFactorGate
{
    public const string SetUpPath = "/account/second-factor";

    public static void UseSecondFactorGate(this WebApplication app) =>
        app.Use(static async (context, next) =>
        {
            if (await MustSetUp(context)) context.Response.Redirect(SetUpPath);
            else await next(context);
        });

    private static async Task<bool> MustSetUp(HttpContext context)
    {
        if (context.User.Identity?.IsAuthenticated != true || context.User.UsedSecondFactor()) return false;
        var path = context.Request.Path;
        if (path == SetUpPath || path == "/sign-out" || IsOpen(context)) return false;
        return (await context.RequestServices.GetRequiredService<ReadPractice>().Now())?.RequiresSecondFactor == true;
    }

    private static bool IsOpen(HttpContext context) =>
        context.GetEndpoint()?.Metadata.GetMetadata<Microsoft.AspNetCore.Authorization.IAllowAnonymous>() is not null;
}
