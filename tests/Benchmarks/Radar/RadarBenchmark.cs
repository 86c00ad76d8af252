using System.Diagnostics;
using CoachOffice.Benchmarks.Measuring;

namespace CoachOffice.Benchmarks.Radar;

/// <summary>Importing a launch monitor's file of 50,000 swings against a bare read and bulk insert of the same file, by turns, each into a new office.</summary>
internal static class RadarBenchmark
{
    private const int Rounds = 5;

    public static async Task Run(TextWriter output)
    {
        await output.WriteLineAsync($"{SwingFile.Rows:N0} rows of eight measures, one transaction, each time into a new office; {Rounds} rounds by turns; median (least to most). Load {LoadAverage.Now}.\n");
        List<double> ours = [], bare = [], looked = [], told = [];
        for (var round = -1; round < Rounds; round++)
        {
            var file = SwingFile.Make(SwingFile.Rows, round + 2);
            var (one, look, say) = await Office(file);
            var other = await Bare(file);
            if (round < 0) continue;
            ours.Add(one);
            looked.Add(look);
            told.Add(say);
            bare.Add(other);
        }

        var table = new Table("what", "ms", "times the bare import");
        table.Add("bare: read cells, insert rows", new Sample(bare).Text("0"), "1");
        table.Add("the office's import", new Sample(ours).Text("0"), Sample.Ratio(ours, bare).Text("0.00"));
        table.Add("taking the file in and saying its columns (before)", new Sample(told).Text("0"), Sample.Ratio(told, bare).Text("0.00"));
        table.Add("the preview with grades (before)", new Sample(looked).Text("0"), Sample.Ratio(looked, bare).Text("0.00"));
        await table.Print(output);
        await Memory(output);
    }

    private static async Task<(double Import, double Preview, double Say)> Office(byte[] content)
    {
        await using var place = await SwingPlace.Make();
        var from = Stopwatch.GetTimestamp();
        var file = await place.Tells(content);
        var said = Stopwatch.GetElapsedTime(from).TotalMilliseconds;
        from = Stopwatch.GetTimestamp();
        await place.Looks(file);
        var looked = Stopwatch.GetElapsedTime(from).TotalMilliseconds;
        from = Stopwatch.GetTimestamp();
        await place.Imports(file);
        return (Stopwatch.GetElapsedTime(from).TotalMilliseconds, looked, said);
    }

    private static async Task<double> Bare(byte[] content)
    {
        await using var place = await SwingPlace.Make();
        using var bare = new BareImport(place.File, place.Student.Value, place.Coach.Account!.Value.Value);
        var from = Stopwatch.GetTimestamp();
        bare.Import(content);
        return Stopwatch.GetElapsedTime(from).TotalMilliseconds;
    }

    /// <summary>What is alive while rows are written must not grow with the file.</summary>
    private static async Task Memory(TextWriter output)
    {
        var table = new Table("rows", "most alive while importing, MB", "allocated a row, KB");
        foreach (var rows in new[] { SwingFile.Rows / 10, SwingFile.Rows / 2, SwingFile.Rows })
        {
            await using var place = await SwingPlace.Make();
            var file = await place.Tells(SwingFile.Make(rows, 1));
            GC.Collect();
            var (before, allocated) = (GC.GetTotalMemory(forceFullCollection: true), GC.GetTotalAllocatedBytes());
            var most = await place.MostWhileImporting(file);
            table.Add($"{rows:N0}", $"{(most - before) / 1024.0 / 1024.0:0.0}", $"{(GC.GetTotalAllocatedBytes() - allocated) / 1024.0 / rows:0.0}");
        }

        await table.Print(output);
    }
}
