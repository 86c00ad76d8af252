using System.Globalization;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;

namespace CoachOffice.Web.Shell.Security;

/// <summary>Limits on doors a stranger may knock at. Settings <c>Office:RateLimits:SignIn</c>, <c>:Links</c> and <c>:Uploads</c> are requests a minute from one address.</summary>
internal static class RateLimits
{
    /// <summary>Posts of passwords and codes.</summary>
    public const string SignIn = "sign-in";

    /// <summary>Private links, read or posted, and browser reports.</summary>
    public const string Links = "links";

    /// <summary>Posts of files.</summary>
    public const string Uploads = "uploads";

    private const int UploadsPerMinute = 20;
    private const int SignInsPerMinute = 10;
    private const int LinksPerMinute = 60;
    private static readonly TimeSpan Window = TimeSpan.FromMinutes(1);

    public static void AddRateLimits(this IServiceCollection services, IConfiguration configuration)
    {
        var signIns = configuration.GetValue("Office:RateLimits:SignIn", SignInsPerMinute);
        var links = configuration.GetValue("Office:RateLimits:Links", LinksPerMinute);
        var uploads = configuration.GetValue("Office:RateLimits:Uploads", UploadsPerMinute);
        services.AddRateLimiter(options =>
        {
            options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
            options.OnRejected = SayWhen;
            options.AddPolicy(SignIn, context => HttpMethods.IsPost(context.Request.Method) ? PerAddress(context, signIns) : RateLimitPartition.GetNoLimiter("read"));
            options.AddPolicy(Uploads, context => HttpMethods.IsPost(context.Request.Method) ? PerAddress(context, uploads) : RateLimitPartition.GetNoLimiter("read"));
            options.AddPolicy(Links, context => PerAddress(context, links));
        });
    }

    private static RateLimitPartition<string> PerAddress(HttpContext context, int permits) =>
        RateLimitPartition.GetSlidingWindowLimiter(
            context.Connection.RemoteIpAddress?.ToString() ?? "unknown",
            _ => new SlidingWindowRateLimiterOptions { PermitLimit = permits, Window = Window, SegmentsPerWindow = 4, QueueLimit = 0 });

    private static ValueTask SayWhen(OnRejectedContext context, CancellationToken cancellation)
    {
        context.HttpContext.Response.Headers.RetryAfter = ((int)Window.TotalSeconds).ToString(CultureInfo.InvariantCulture);
        return ValueTask.CompletedTask;
    }
}
