namespace CoachOffice.Web.Shell.Security;

/// <summary>Takes a browser's report of a blocked source. It only counts and logs a little, for anyone can send one.</summary>
internal static partial class CspReportRoute
{
    private const int LogAtMost = 500;

    public static void MapCspReports(this WebApplication app) =>
        app.MapPost(AnonymousPages.CspReport, Take).AllowAnonymous().RequireRateLimiting(RateLimits.Links);

    private static async Task<IResult> Take(HttpRequest request, CspReports reports, ILogger<CspReports> log)
    {
        reports.Add();
        var text = new char[LogAtMost];
        using var reader = new StreamReader(request.Body);
        var read = await reader.ReadBlockAsync(text, request.HttpContext.RequestAborted);
        LogReport(log, new string(text, 0, read).ReplaceLineEndings(" "));
        return Results.NoContent();
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "A browser reports a blocked source: {Report}")]
    private static partial void LogReport(ILogger log, string report);
}
