using CoachOffice.Data;

namespace CoachOffice.Web.Shell;

/// <summary>What must be done before the first request.</summary>
internal static partial class StartUp
{
    /// <summary>Prepares the database; false, with the reason in the log, when this program must not touch it.</summary>
    public static async Task<bool> PrepareOffice(this WebApplication app)
    {
        await using var scope = app.Services.CreateAsyncScope();
        var refusal = await scope.ServiceProvider.GetRequiredService<PrepareDatabase>().Now(app.Lifetime.ApplicationStopping);
        if (refusal is not null)
        {
            LogRefusal(app.Logger, refusal.Sentence);
            return false;
        }

        return true;
    }

    [LoggerMessage(Level = LogLevel.Critical, Message = "{Sentence}")]
    private static partial void LogRefusal(ILogger log, string sentence);
}
