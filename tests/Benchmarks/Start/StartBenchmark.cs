using System.Globalization;
using CoachOffice.Benchmarks.Measuring;
using CoachOffice.Benchmarks.Programs;

namespace CoachOffice.Benchmarks.Start;

/// <summary>Process start to the first page, and memory at rest, of the office against a program of one route.</summary>
internal sealed class StartBenchmark : IDisposable
{
    private const int Rounds = 7;
    private const string FirstRun = "/first-run";
    private static readonly TimeSpan Rest = TimeSpan.FromSeconds(5);

    private readonly HttpClient _client = new(new SocketsHttpHandler { AllowAutoRedirect = false, PooledConnectionLifetime = TimeSpan.Zero });
    private readonly Starts _bare = new("one route");
    private readonly Starts _empty = new("office, new data folder (makes its database)");
    private readonly Starts _known = new("office, database made before");

    public static async Task Run(TextWriter output)
    {
        using var benchmark = new StartBenchmark();
        var folder = Directory.CreateTempSubdirectory("coachoffice-start-");
        for (var round = -1; round < Rounds; round++) await benchmark.Round(folder.CreateSubdirectory(round.ToString(CultureInfo.InvariantCulture)).FullName, round >= 0);
        folder.Delete(true);
        await benchmark.Print(output);
    }

    public void Dispose() => _client.Dispose();

    private async Task Round(string folder, bool counts)
    {
        using (var bare = RunningProgram.Bare()) await Measure(_bare, bare, "/", counts);
        using (var empty = RunningProgram.Office(folder)) await Measure(_empty, empty, FirstRun, counts);
        using (var known = RunningProgram.Office(folder)) await Measure(_known, known, FirstRun, counts);
    }

    private async Task Measure(Starts starts, RunningProgram program, string page, bool counts)
    {
        var first = await program.FirstPage(_client, page);
        if (!counts) return;
        await Task.Delay(Rest);
        starts.Milliseconds.Add(first);
        starts.Megabytes.Add(program.ResidentMegabytes());
    }

    private async Task Print(TextWriter output)
    {
        await output.WriteLineAsync($"{Rounds} rounds by turns, each a new process; first page is `/` of the bare program and `{FirstRun}` of the office; memory is resident {Rest.TotalSeconds:0} s after it; median (least to most).\n");
        var table = new Table("program", "first page, ms", "times bare", "resident MB", "times bare");
        foreach (var s in new[] { _bare, _empty, _known })
            table.Add(s.Name, new Sample(s.Milliseconds).Text("0"), Sample.Ratio(s.Milliseconds, _bare.Milliseconds).Text("0.00"), new Sample(s.Megabytes).Text("0"), Sample.Ratio(s.Megabytes, _bare.Megabytes).Text("0.00"));
        await table.Print(output);
    }

    private sealed record Starts(string Name)
    {
        public List<double> Milliseconds { get; } = [];

        public List<double> Megabytes { get; } = [];
    }
}
