using System.Diagnostics;
using CoachOffice.Benchmarks.Measuring;

namespace CoachOffice.Benchmarks.Replay;

/// <summary>One way of doing something, timed round by round by the clock and by the processor time of this process, which others on the machine sway less.</summary>
internal sealed class Lap(string name, Func<Task> work, double scale = 1)
{
    private readonly List<double> _seconds = [];
    private readonly List<double> _processor = [];

    public async Task Round()
    {
        GC.Collect();
        var (from, used) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
        await work();
        _seconds.Add(Stopwatch.GetElapsedTime(from).TotalSeconds * scale);
        _processor.Add((Environment.CpuUsage.TotalTime - used).TotalSeconds * scale);
    }

    /// <summary>Warms each up once, then takes them by turns.</summary>
    public static async Task ByTurns(int rounds, params Lap[] laps)
    {
        foreach (var lap in laps) await lap.Round();
        foreach (var lap in laps) lap.Clear();
        for (var round = 0; round < rounds; round++) foreach (var lap in laps) await lap.Round();
    }

    public static Task Print(TextWriter output, params Lap[] laps)
    {
        var table = new Table("what", "seconds", "processor seconds");
        foreach (var lap in laps) table.Add(lap.Name, new Sample(lap._seconds).Text("0.00"), new Sample(lap._processor).Text("0.00"));
        return table.Print(output);
    }

    /// <summary>How often this goes into the other, by the clock and by processor time.</summary>
    public string Times(Lap other) => $"**{Sample.Ratio(other._seconds, _seconds).Text("0.00")}** by the clock, {Sample.Ratio(other._processor, _processor).Text("0.00")} by processor time";

    private string Name => name;

    private void Clear()
    {
        _seconds.Clear();
        _processor.Clear();
    }
}
