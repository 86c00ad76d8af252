
namespace CoachOffice.Web.Shell.Watching;

/// <summary>The log as one JSON object a line, for programs that gather logs: the setting <c>Office:Log:Json</c>.</summary>
internal static class LogSetup
{
    public static void WriteLogForPrograms(this WebApplicationBuilder builder)
    {
        if (!builder.Configuration.GetValue("Office:Log:Json", false)) return;
        builder.Logging.AddJsonConsole(static json =>
        {
            // Scopes name the path of the request, and with it private links.
            json.IncludeScopes = false;
            json.UseUtcTimestamp = true;
            json.TimestampFormat = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";
        });
    }
}
