using System.Data.Common;
using System.Diagnostics;
using System.Globalization;
using CoachOffice.Benchmarks.Office;
using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.FaultProof;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.Benchmarks.Mail;

/// <summary>An office with twice as many messages due as are sent, half of them for the bare loop, and a mail server in a process of its own.</summary>
internal sealed class DueOffice : IAsyncDisposable
{
    public const int Wanted = 20_000;
    public const string Kinds = "half of them prompts for a re-test, a quarter notes after a quiet week (each writes the next one), a quarter plans (which may not be repeated by guess)";

    private static readonly DateTimeOffset Monday = new(2026, 3, 2, 10, 0, 0, TimeSpan.Zero);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("coachoffice-mail-");
    private readonly ShiftedTime _time = new(Monday);
    private OpenOffice _office = null!;
    private string? _admin;
    private Process _server = null!;

    public OfficeDatabase Database { get; private set; } = null!;

    public int Port { get; private set; }

    public static async Task<DueOffice> Make(DatabaseProvider provider, string? admin)
    {
        var due = new DueOffice { _admin = admin };
        await due.StartServer();
        due.Database = provider == DatabaseProvider.Sqlite ? OfficeDatabase.InFile(Path.Combine(due._folder.FullName, "office.db")) : await due.NewDatabase(admin!);
        due._office = new OpenOffice(due._folder.FullName, time: due._time, settings: new Dictionary<string, string?>(StringComparer.Ordinal)
        {
            ["Office:Database:Provider"] = provider.ToString(),
            ["Office:Database:ConnectionString"] = due.Database.ConnectionString,
            ["Office:Mail:Host"] = "127.0.0.1",
            ["Office:Mail:Port"] = due.Port.ToString(CultureInfo.InvariantCulture),
            ["Office:Mail:AllowPlain"] = "true",
        });
        await due.Fill();
        return due;
    }

    /// <summary>Sweeps for a while; how many went and how long it took.</summary>
    public async Task<(int Count, double Seconds)> Sweep(TimeSpan atMost)
    {
        using var stop = new CancellationTokenSource(atMost);
        var began = Stopwatch.GetTimestamp();
        var result = await _office.Do((SweepMessages sweep) => sweep.Once(stop.Token));
        if (result.Sent == 0 || result.TriedAgainLater + result.NeedAttention + result.Skipped > 0) throw new InvalidOperationException($"The sweep did not go well: {result}");
        return (result.Sent, Stopwatch.GetElapsedTime(began).TotalSeconds);
    }

    public Task<int> Left() => _office.Do((OfficeDb db) => db.Messages.CountAsync(m => m.State == MessageState.Waiting && m.DueAt < Instant.FromDateTimeOffset(_time.GetUtcNow())));

    /// <summary>Size of a mail as it leaves, in bytes, from one that is written into a folder.</summary>
    public async Task<int> OneMail()
    {
        await _office.Do(async (OfficeDb db) => await db.Practices.ExecuteUpdateAsync(p => p.SetProperty(x => x.IsDemo, true)));
        await Sweep(TimeSpan.FromSeconds(8));
        await _office.Do(async (OfficeDb db) => await db.Practices.ExecuteUpdateAsync(p => p.SetProperty(x => x.IsDemo, false)));
        return (int)new DirectoryInfo(Path.Combine(_folder.FullName, "mail")).GetFiles("*.eml").Average(f => f.Length);
    }

    /// <summary>What a commit of this database means.</summary>
    public Task<string> Durability() => _office.Do(async (OfficeDb db) =>
    {
        if (Database.Provider == DatabaseProvider.Sqlite) return "synchronous = FULL";
        var fsync = await db.Database.SqlQueryRaw<string>("SELECT 'fsync = ' || current_setting('fsync') || ', synchronous_commit = ' || current_setting('synchronous_commit') AS \"Value\"").SingleAsync();
        return fsync;
    });

    public async ValueTask DisposeAsync()
    {
        _server.Kill();
        await _office.DisposeAsync();
        if (_admin is not null)
        {
            var name = new DbConnectionStringBuilder { ConnectionString = Database.ConnectionString }["Database"];
            await Run(_admin, $"DROP DATABASE IF EXISTS \"{name}\" WITH (FORCE)");
        }

        Database.LetGo();
        _folder.Delete(true);
    }

    private async Task Fill()
    {
        var people = new FirstPeople(_office);
        await people.Open();
        var served = await people.Serve("Hester", approve: true);
        await _office.Do(async (OfficeDb db) =>
        {
            var many = new ManyDue(db);
            await many.Add(served.Plan, MessageKind.RetestPrompt, Wanted, series: 1);
            await many.Add(served.Plan, MessageKind.PracticeNudge, Wanted / 2, series: 2);
            await many.Add(served.Plan, MessageKind.PlanDelivery, Wanted / 2, series: 3);

            // Mixed as in life: none of a kind comes all at once.
            var due = Instant.FromDateTimeOffset(Monday);
            await db.Messages.ExecuteUpdateAsync(m => m.SetProperty(x => x.DueAt, due));
            return await db.Practices.ExecuteUpdateAsync(p => p.SetProperty(x => x.MailFrom, "office@long-meadow.example").SetProperty(x => x.PublicAddress, "https://long-meadow.example"));
        });
        if (Database.Provider == DatabaseProvider.PostgreSql) await _office.Do((OfficeDb db) => db.Database.ExecuteSqlRawAsync("ANALYZE"));
        _time.Jump(TimeSpan.FromDays(21));
    }

    private async Task StartServer()
    {
        _server = Process.Start(new ProcessStartInfo("dotnet", [typeof(ManyDue).Assembly.Location, "mail-server", Path.Combine(_folder.FullName, "taken.log")]) { UseShellExecute = false, RedirectStandardInput = true, RedirectStandardOutput = true })!;
        Port = int.Parse((await _server.StandardOutput.ReadLineAsync())!, CultureInfo.InvariantCulture);
        await _server.StandardInput.WriteLineAsync(nameof(ServerMode.Forget));
    }

    private async Task<OfficeDatabase> NewDatabase(string admin)
    {
        var name = $"coachoffice_mail_{Environment.ProcessId}";
        await Run(admin, $"CREATE DATABASE \"{name}\"");
        return new OfficeDatabase(DatabaseProvider.PostgreSql, new DbConnectionStringBuilder { ConnectionString = admin, ["Database"] = name }.ConnectionString);
    }

    private static async Task Run(string admin, string sql)
    {
        await using var db = new OfficeDb(new OfficeDatabase(DatabaseProvider.PostgreSql, admin).Options());
        await db.Database.ExecuteSqlRawAsync(sql);
    }
}
