using CoachOffice.UseCases.Rulebook;

namespace CoachOffice.Benchmarks.Replay;

/// <summary>Looks every 50 ms at the memory of this process while a comparison runs, told apart by how far it has come.</summary>
internal sealed class MemoryWatch(int lessons)
{
    private const int Parts = 4;

    /// <summary>Most of the managed heap in each quarter of the lessons, garbage included, MB.</summary>
    public double[] Heap { get; } = new double[Parts];

    /// <summary>Most of the resident memory in each quarter, MB.</summary>
    public double[] Resident { get; } = new double[Parts];

    /// <summary>What is held now, after a full collection, MB.</summary>
    public static double Held() => Megabytes(GC.GetTotalMemory(true));

    public async Task Beside(ReplayRun run)
    {
        using var timer = new PeriodicTimer(TimeSpan.FromMilliseconds(50));
        while (run.State is ReplayState.Searching or ReplayState.Comparing && await timer.WaitForNextTickAsync())
        {
            var part = (int)Math.Min(Parts - 1, (long)Parts * run.Tally.Counts().Followed / lessons);
            Heap[part] = Math.Max(Heap[part], Megabytes(GC.GetTotalMemory(false)));
            Resident[part] = Math.Max(Resident[part], Megabytes(Environment.WorkingSet));
        }
    }

    private static double Megabytes(long bytes) => bytes / 1024.0 / 1024;
}
