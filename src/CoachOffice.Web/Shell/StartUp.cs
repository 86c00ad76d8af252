using CoachOffice.Data;
using CoachOffice.UseCases.Rulebook;

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

        await AdoptRulebook(app, scope.ServiceProvider);
        return true;
    }

    /// <summary>A faulty rulebook keeps nobody out of the office: the book in force before stays, and the faults are in the log.</summary>
    private static async Task AdoptRulebook(WebApplication app, IServiceProvider services)
    {
        var adopted = await services.GetRequiredService<AdoptShippedRulebook>().AtStartUp(app.Lifetime.ApplicationStopping);
        foreach (var fault in adopted.Refusals) LogRefusal(app.Logger, fault.Sentence);
    }

    [LoggerMessage(Level = LogLevel.Critical, Message = "{Sentence}")]
    private static partial void LogRefusal(ILogger log, string sentence);
}
