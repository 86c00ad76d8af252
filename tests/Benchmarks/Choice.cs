using CoachOffice.Benchmarks.Calendar;
using CoachOffice.Benchmarks.Charts;
using CoachOffice.Benchmarks.Drafting;
using CoachOffice.Benchmarks.Engine;
using CoachOffice.Benchmarks.Mail;
using CoachOffice.Benchmarks.Pages;
using CoachOffice.Benchmarks.Radar;
using CoachOffice.Benchmarks.Replay;
using CoachOffice.Benchmarks.Saving;
using CoachOffice.Benchmarks.Search;
using CoachOffice.Benchmarks.Start;

namespace CoachOffice.Benchmarks;

/// <summary>Which benchmarks were asked for. Each prints ratios of two things measured by turns in one run; none is a test.</summary>
internal static class Choice
{
    private static readonly IReadOnlyList<(string Name, Func<TextWriter, Task> Run)> All =
    [
        ("drafter", DrafterBenchmark.Run),
        ("engine", EngineBenchmark.Run),
        ("saving", SavingBenchmark.Run),
        ("start", StartBenchmark.Run),
        ("pages", PagesBenchmark.Run),
        ("calendar", CalendarBenchmark.Run),
        ("search", SearchBenchmark.Run),
        ("charts", ChartsBenchmark.Run),
        ("replay", ReplayBenchmark.Run),
        ("radar", RadarBenchmark.Run),
        ("mail", MailBenchmark.Run),
    ];

    public static async Task<int> Run(string[] args, TextWriter output)
    {
        var names = args is [] or ["all"] ? All.Select(b => b.Name).ToList() : [.. args];
        if (names.Except(All.Select(b => b.Name), StringComparer.Ordinal).ToList() is { Count: > 0 } unknown)
        {
            await output.WriteLineAsync($"No benchmark {string.Join(", ", unknown)}; there are: {string.Join(", ", All.Select(b => b.Name))}, all.");
            return 2;
        }

        foreach (var (name, run) in All.Where(b => names.Contains(b.Name, StringComparer.Ordinal)))
        {
            await output.WriteLineAsync($"## {name}\n\n`dotnet run -c Release --project tests/Benchmarks -- {name}`\n");
            await run(output);
            await output.WriteLineAsync();
        }

        return 0;
    }
}
