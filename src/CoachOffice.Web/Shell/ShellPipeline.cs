using CoachOffice.Web.Features.Bookings.Calendars;
using CoachOffice.Web.Features.FollowUps;
using CoachOffice.Web.Features.Media;
using CoachOffice.Web.Shell.Clock;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Starting;
using CoachOffice.Web.Shell.Watching;

namespace CoachOffice.Web.Shell;

/// <summary>The order in which a request passes through the shell.</summary>
internal static class ShellPipeline
{
    public static void UseShell(this WebApplication app)
    {
        app.UseLocalProxy();
        app.UseResponseCompression();
        app.UseSecurityHeaders();
        app.UseExceptionHandler("/problem/500");
        app.UseStatusCodePagesWithReExecute("/problem/{0}");
        app.UseNoStore();
        app.UseRouting();
        app.UseRateLimiter();
        app.UseAuthentication();
        app.UseAuthorization();
        app.UseSecondFactorGate();
        app.UseStartDoor();
        app.UseAntiforgery();
    }

    public static void MapShell(this WebApplication app)
    {
        app.MapStaticAssets().AllowAnonymous();
        app.MapHealth();
        app.MapCspReports();
        app.MapCalendarFeeds();
        app.MapBounces();
        app.MapClock();
        app.MapMedia();
        app.MapClipUploads();
        app.MapRazorPages().WithStaticAssets();
    }
}
