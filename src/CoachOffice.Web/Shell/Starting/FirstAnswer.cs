namespace CoachOffice.Web.Shell.Starting;

/// <summary>When the office has answered somebody for the first time. What no page waits for starts after it, so that whoever opened the office sees it sooner.</summary>
internal sealed class FirstAnswer(IHostApplicationLifetime life, TimeProvider time)
{
    /// <summary>Nobody may ask for hours; after this long the rest starts anyway.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromSeconds(2);

    private readonly TaskCompletionSource _given = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>Somebody was answered, or cannot be before the rest has started.</summary>
    public void Given() => _given.TrySetResult();

    /// <summary>Ends with the first answer, or a moment after the office listens; throws <see cref="OperationCanceledException"/> when the office stops before.</summary>
    public async Task Wait()
    {
        var listening = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        await using var started = life.ApplicationStarted.Register(() => listening.TrySetResult());
        await listening.Task.WaitAsync(life.ApplicationStopping);
        await Task.WhenAny(_given.Task, Task.Delay(Longest, time, life.ApplicationStopping));
        life.ApplicationStopping.ThrowIfCancellationRequested();
    }
}
