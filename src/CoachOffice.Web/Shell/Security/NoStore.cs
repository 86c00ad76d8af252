namespace CoachOffice.Web.Shell.Security;

/// <summary>Pages hold people's data, so no cache keeps them. Static files and images with an ETag say their own.</summary>
internal static class NoStore
{
    private const string Value = "no-store, max-age=0";

    public static void UseNoStore(this WebApplication app) =>
        app.Use(static (context, next) =>
        {
            context.Response.OnStarting(static state =>
            {
                var response = ((HttpContext)state).Response;
                var isPage = response.ContentType?.StartsWith("text/html", StringComparison.OrdinalIgnoreCase) ?? true;
                if (isPage || response.Headers.CacheControl.Count == 0) response.Headers.CacheControl = Value;
                return Task.CompletedTask;
            }, context);
            return next(context);
        });
}
