using System.Diagnostics;

namespace CoachOffice.Benchmarks.Pages;

/// <summary>The same request again and again over several connections, bounded in time and number.</summary>
internal static class Load
{
    public const int Connections = 6;

    private const int Most = 20_000;
    private static readonly TimeSpan Span = TimeSpan.FromSeconds(1.5);

    /// <summary>Requests a second.</summary>
    public static async Task<double> Rate(Func<Task<int>> request)
    {
        var (from, done) = (Stopwatch.GetTimestamp(), 0);
        await Task.WhenAll(Enumerable.Range(0, Connections).Select(async _ =>
        {
            while (Stopwatch.GetElapsedTime(from) < Span && Interlocked.Increment(ref done) <= Most) await request();
        }));
        return Math.Min(done, Most) / Stopwatch.GetElapsedTime(from).TotalSeconds;
    }
}
