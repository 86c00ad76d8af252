using CoachOffice.Data;
using CoachOffice.UseCases.Rulebook;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Web.Shell.Starting;

/// <summary>Takes the shipped rulebook into force after the first answer: reading it and running its cases would keep a new office waiting, and the first pages need no rules. Whoever is signed in waits at the door until there is a book.</summary>
internal sealed partial class ShippedBookStart(FirstAnswer first, IServiceScopeFactory scopes, IHostApplicationLifetime life, ILogger<ShippedBookStart> log) : IHostedService
{
    private readonly TaskCompletionSource _settled = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private Task _adoption = Task.CompletedTask;

    /// <summary>Ends when some book is in force, or when none could be taken.</summary>
    public Task Settled => _settled.Task;

    public Task StartAsync(CancellationToken cancellationToken)
    {
        _adoption = Task.Run(Adopt, cancellationToken);
        return Task.CompletedTask;
    }

    public Task StopAsync(CancellationToken cancellationToken) => _adoption.WaitAsync(cancellationToken);

    private async Task Adopt()
    {
        try
        {
            await first.Wait();
            await using var scope = scopes.CreateAsyncScope();
            if (await scope.ServiceProvider.GetRequiredService<OfficeDb>().BooksInForce.AnyAsync(life.ApplicationStopping)) _settled.SetResult();
            await Adopt(scope.ServiceProvider.GetRequiredService<AdoptShippedRulebook>());
        }
        catch (OperationCanceledException) when (life.ApplicationStopping.IsCancellationRequested)
        {
            // Stopped before it was done: the next start takes it up.
        }
        catch (Exception failure)
        {
            LogFailure(failure);
        }
        finally
        {
            _settled.TrySetResult();
        }
    }

    /// <summary>A faulty rulebook keeps nobody out of the office: the book in force before stays, and the faults are in the log.</summary>
    private async Task Adopt(AdoptShippedRulebook adopt)
    {
        var adopted = await adopt.AtStartUp(life.ApplicationStopping);
        foreach (var fault in adopted.Refusals) LogFault(fault.Sentence);
    }

    [LoggerMessage(Level = LogLevel.Critical, Message = "{Sentence}")]
    private partial void LogFault(string sentence);

    [LoggerMessage(Level = LogLevel.Critical, Message = "The rulebook that came with the program could not be taken into force.")]
    private partial void LogFailure(Exception failure);
}
