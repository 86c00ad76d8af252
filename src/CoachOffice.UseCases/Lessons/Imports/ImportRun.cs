using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>One import under way.</summary>
internal sealed partial class ImportRun(ImportOrder order, IServiceScopeFactory scopes, ILogger log) : IDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private volatile FileReading? _reading;
    private volatile IReadOnlyList<Refusal> _refusals = [];
    private volatile int _rows;
    private volatile ImportState _state = ImportState.Running;

    public AccountId? Account => order.Actor.Account;

    public bool IsRunning => _state == ImportState.Running;

    public ImportProgress Progress => new(_state, IsRunning ? _reading?.Percent ?? 0 : 100, _rows, _refusals);

    /// <summary>The file is now being read.</summary>
    public void Reads(FileReading reading) => _reading = reading;

    /// <summary>A batch of rows was written.</summary>
    public void Wrote(int rows) => _rows = rows;

    /// <summary>Ends it soon; nothing of it stays.</summary>
    public void Stop() => _stop.Cancel();

    /// <summary>Runs to the end, the stop, or a defect, which is logged: nobody waits for the task.</summary>
    public async Task Run()
    {
        try
        {
            await using var scope = scopes.CreateAsyncScope();
            var kept = await scope.ServiceProvider.GetRequiredService<KeepDeviceRows>().Of(order, this, _stop.Token);
            _refusals = kept.Refusals;
            _state = kept.Succeeded ? ImportState.Done : ImportState.Refused;
        }
        catch (Exception) when (_stop.IsCancellationRequested)
        {
            _state = ImportState.Stopped;
        }
        catch (Exception fault)
        {
            _state = ImportState.Failed;
            Failed(log, order.File, fault);
        }
    }

    public void Dispose() => _stop.Dispose();

    [LoggerMessage(LogLevel.Error, "Importing the device file {File} failed; nothing of it was kept.")]
    private static partial void Failed(ILogger log, Guid file, Exception fault);
}
