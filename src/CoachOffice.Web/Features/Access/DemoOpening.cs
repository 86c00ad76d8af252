using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.SeedDemo;
using CoachOffice.UseCases.Access;

namespace CoachOffice.Web.Features.Access;

/// <summary>Opening the demo practice takes a while, so it goes on while the browser looks how far it is. One at a time; ends with the program.</summary>
public sealed partial class DemoOpening(IServiceScopeFactory scopes, IHostApplicationLifetime life, ILogger<DemoOpening> log)
{
    private readonly Lock _gate = new();
    private Task<Outcome<AccountId>>? _work;

    /// <summary>Whole percent, 0 to 100.</summary>
    public int Percent { get; private set; }

    /// <summary>What is being done, for a person.</summary>
    public string Doing { get; private set; } = "";

    public bool IsBusy => _work is { IsCompleted: false };

    /// <summary>The reasons when the form was refused; null while it goes on or after it went well.</summary>
    public async Task<IReadOnlyList<Refusal>?> Begin(FirstRunForm form)
    {
        var accepted = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        Task<Outcome<AccountId>> work;
        lock (_gate) work = IsBusy ? _work! : _work = Task.Run(() => Make(form, accepted), life.ApplicationStopping);
        // Nobody awaits it to its end, so a failure is written down here.
        _ = work.ContinueWith(failed => LogFailure(log, failed.Exception), CancellationToken.None, TaskContinuationOptions.OnlyOnFaulted, TaskScheduler.Default);
        await Task.WhenAny(work, accepted.Task);
        return work.IsCompletedSuccessfully && !work.Result.Succeeded ? work.Result.Refusals : null;
    }

    private async Task<Outcome<AccountId>> Make(FirstRunForm form, TaskCompletionSource accepted)
    {
        await using var scope = scopes.CreateAsyncScope();
        (Percent, Doing) = (0, "Opening the practice");
        return await DemoPractice.Open(scope.ServiceProvider, form, new Teller(this, accepted), life.ApplicationStopping);
    }

    /// <summary>The first word of progress also says that the form was right.</summary>
    private sealed class Teller(DemoOpening opening, TaskCompletionSource accepted) : IProgress<SeedProgress>
    {
        public void Report(SeedProgress value)
        {
            (opening.Percent, opening.Doing) = (value.Percent, value.Doing);
            accepted.TrySetResult();
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "The demo practice could not be opened.")]
    private static partial void LogFailure(ILogger log, Exception? failure);
}
