using CoachOffice.Data;
using CoachOffice.Web.Shell.Clock;
using CoachOffice.Web.Shell.Starting;

namespace CoachOffice.Web.Shell.Watching;

/// <summary>What of this node itself must be in order before visitors are sent here.</summary>
internal sealed class ReadyParts(ShippedBookStart book, DataFolder folder, IHostApplicationLifetime life, IServiceProvider services)
{
    private const string Probe = ".ready";

    /// <summary>Whoever asks before sending visitors must hear it before the door is shut.</summary>
    public bool Stopping => life.ApplicationStopping.IsCancellationRequested;

    /// <summary>What is wrong here, or null.</summary>
    public async Task<string?> WrongHere(CancellationToken stop)
    {
        if (!book.Settled.IsCompleted) return "the rulebook is being read";
        if (services.GetService<ClockStart>() is { IsGoing: false }) return "the clock does not go";
        return await CanWrite(stop) ? null : "the data folder takes no file";
    }

    private async Task<bool> CanWrite(CancellationToken stop)
    {
        var probe = folder.Inside($"{Probe}-{Environment.ProcessId}");
        try
        {
            await File.WriteAllBytesAsync(probe, new byte[4096], stop);
            File.Delete(probe);
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
