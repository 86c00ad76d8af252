using System.Diagnostics;
using System.Globalization;
using CoachOffice.Benchmarks.Measuring;
using CoachOffice.Data;

namespace CoachOffice.Benchmarks.Mail;

/// <summary>Sweeping 20,000 due messages against the least a program could do: hand over a mail of the same size with the same library, then one durable update, again and again.</summary>
internal static class MailBenchmark
{
    private static readonly TimeSpan Turn = TimeSpan.FromSeconds(4);

    public static async Task Run(TextWriter output)
    {
        var database = Environment.GetEnvironmentVariable("COACHOFFICE_TEST_DB");
        await On(output, DatabaseProvider.Sqlite, null);
        if (!string.IsNullOrWhiteSpace(database)) await On(output, DatabaseProvider.PostgreSql, database);
        else await output.WriteLineAsync("PostgreSQL was not measured: COACHOFFICE_TEST_DB is not set.\n");
    }

    private static async Task On(TextWriter output, DatabaseProvider provider, string? admin)
    {
        await using var office = await DueOffice.Make(provider, admin);
        await using var bare = await BareSender.To(office);
        List<double> ours = [], theirs = [], memory = [];
        var (sent, size) = (0, await office.OneMail());
        await office.Sweep(TimeSpan.FromSeconds(1));
        await bare.Send(TimeSpan.FromSeconds(1), size);
        while (sent < DueOffice.Wanted && await office.Left() > DueOffice.Wanted / 4)
        {
            var (count, seconds) = await office.Sweep(Turn);
            sent += count;
            ours.Add(count / seconds);
            theirs.Add(await bare.Send(Turn, size));
            memory.Add(GC.GetTotalMemory(forceFullCollection: true) / 1024.0 / 1024);
        }

        var durable = await office.Durability();
        await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{provider}, {durable}: {sent:N0} messages in {ours.Count} turns of {Turn.TotalSeconds:0} s, {DueOffice.Kinds}; mail of {size / 1024.0:0.0} KB; median (least to most). Load {LoadAverage.Now}.\n"));
        var table = new Table("what", "messages a second", "of the bare loop");
        table.Add("bare: one mail over a kept connection, one durable update", new Sample(theirs).Text("0"), "1");
        table.Add("the office's sweep", new Sample(ours).Text("0"), Sample.Ratio(ours, theirs).Text("0.00"));
        await table.Print(output);
        await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"Held after a full collection, MB, after each turn: {string.Join(", ", memory.Select(m => m.ToString("0.0", CultureInfo.InvariantCulture)))}; resident at the end {Process.GetCurrentProcess().WorkingSet64 / 1024 / 1024} MB.\n"));
    }
}
