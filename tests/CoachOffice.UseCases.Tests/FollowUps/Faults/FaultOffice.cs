using System.Diagnostics;
using System.Globalization;
using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.FaultProof;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.FollowUps.Faults;

/// <summary>An office with many messages due, a mail server and nodes, each a process of its own. Fridays, ten in the morning.</summary>
internal sealed class FaultOffice : IAsyncDisposable
{
    /// <summary>What goes out may take this long here; leases are five times it.</summary>
    public const int TimeoutSeconds = 6;

    /// <summary>What a dead node held is free after this.</summary>
    public static readonly TimeSpan Lease = TimeSpan.FromSeconds(5 * TimeoutSeconds + 1);

    private static readonly DateTimeOffset Morning = new(2026, 3, 20, 10, 0, 0, TimeSpan.Zero);
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(2);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly long _began = Stopwatch.GetTimestamp();
    private readonly TestOffice _office;
    private readonly string _log;
    private readonly string _port;
    private readonly List<FaultProgram> _nodes = [];
    private TimeSpan _jumped;

    private FaultOffice(TestOffice office, FaultProgram server, string port, string log) => (_office, Server, _port, _log, Database) = (office, server, port, log, office.Database);

    public FaultProgram Server { get; }

    public OfficeDatabase Database { get; private set; } = null!;

    /// <summary>An office with so many due of each kind.</summary>
    public static async Task<FaultOffice> With(TestOffice office, params (MessageKind Kind, int Count)[] due)
    {
        var scene = await Scene.Approved(office);
        await using (var db = new OfficeDb(office.Database.Options()))
        {
            for (var n = 0; n < due.Length; n++) await new ManyDue(db).Add(scene.Plan, due[n].Kind, due[n].Count, series: n + 1);
            await db.Messages.Where(m => m.PlanId == scene.Plan).ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Skipped));
        }

        var log = Path.Combine(office.Folder, "accepted.log");
        var (server, port) = await FaultProgram.Start(["mail-server", log], new Dictionary<string, string>(StringComparer.Ordinal));
        return new FaultOffice(office, server, port, log);
    }

    /// <summary>The file goes on in another folder.</summary>
    public async Task MoveTo(string folder)
    {
        var target = Path.Combine(folder, "office.db");
        await using var db = new OfficeDb(Database.Options());
        await db.Database.ExecuteSqlAsync($"VACUUM INTO {target}");
        Database = OfficeDatabase.InFile(target);
    }

    /// <summary>One node more, on the database and the clock of all.</summary>
    public async Task<FaultProgram> Node()
    {
        var now = Morning + Stopwatch.GetElapsedTime(_began) + _jumped;
        var (node, _) = await FaultProgram.Start(["node"], new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["FAULTPROOF_NOW"] = now.ToString("O", CultureInfo.InvariantCulture),
            ["COACHOFFICE_DATA"] = _office.Folder,
            ["COACHOFFICE_Office__Database__Provider"] = Database.Provider.ToString(),
            ["COACHOFFICE_Office__Database__ConnectionString"] = Database.ConnectionString,
            ["COACHOFFICE_Office__Mail__Host"] = "127.0.0.1",
            ["COACHOFFICE_Office__Mail__Port"] = _port,
            ["COACHOFFICE_Office__Mail__AllowPlain"] = "true",
            ["COACHOFFICE_Office__Mail__TimeoutSeconds"] = TimeoutSeconds.ToString(CultureInfo.InvariantCulture),
        });
        _nodes.Add(node);
        return node;
    }

    /// <summary>The clock of all nodes jumps, of those started later too.</summary>
    public async Task Jump(TimeSpan by, params FaultProgram[] nodes)
    {
        _jumped += by;
        foreach (var node in nodes) await node.Tell($"jump {by.TotalSeconds.ToString(CultureInfo.InvariantCulture)}");
    }

    /// <summary>Message-IDs the server took, in order.</summary>
    public async Task<IReadOnlyList<string>> Accepted()
    {
        await Server.Tell("drain");
        return [.. (await File.ReadAllLinesAsync(_log)).Select(l => l.Trim('<', '>'))];
    }

    /// <summary>Waits until the server took so many in all.</summary>
    public Task UntilAccepted(int count) => Until(() => Task.FromResult(File.ReadLines(_log).Count() >= count), $"{count} messages at the server");

    /// <summary>Waits until something is so, as the database has it.</summary>
    public Task Until(Func<OfficeDb, Task<bool>> so, string what) => Until(async () =>
    {
        await using var db = new OfficeDb(Database.Options());
        return await so(db);
    }, what);

    /// <summary>The messages that were due, by Message-ID.</summary>
    public async Task<IReadOnlyDictionary<string, Message>> Due()
    {
        await using var db = new OfficeDb(Database.Options());
        var due = await db.Messages.AsNoTracking().Where(m => m.State != MessageState.Skipped && m.DueAt < NodaTime.Instant.FromDateTimeOffset(Morning + _jumped)).ToListAsync();
        return due.ToDictionary(m => $"{m.StableName}@localhost", StringComparer.Ordinal);
    }

    /// <summary>Lets time pass in steps until nothing waits any more; retries and leases run out on the way.</summary>
    public async Task Finish(FaultProgram node)
    {
        for (var hours = 0; hours < 12 && await Waiting() > 0; hours++)
        {
            var before = await Waiting();
            await UntilCalm();
            if (await Waiting() == before || before > 0) await Jump(TimeSpan.FromMinutes(40), node);
        }

        await Until(async db => await db.Messages.CountAsync(m => m.State == MessageState.Waiting && m.DueAt <= NodaTime.Instant.FromDateTimeOffset(Morning + _jumped)) == 0, $"an empty outbox; {node.Errors}");
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var node in _nodes) await node.DisposeAsync();
        await Server.DisposeAsync();
    }

    private async Task<int> Waiting()
    {
        await using var db = new OfficeDb(Database.Options());
        return await db.Messages.CountAsync(m => m.State == MessageState.Waiting && m.DueAt <= NodaTime.Instant.FromDateTimeOffset(Morning + _jumped));
    }

    // Nothing more went for a moment: what waits now waits for time to pass.
    private async Task UntilCalm()
    {
        for (var (last, calm) = (-1, 0); calm < 10; await Task.Delay(TimeSpan.FromMilliseconds(50)))
        {
            var now = await Waiting();
            (calm, last) = now == last ? (calm + 1, now) : (0, now);
            if (now == 0) return;
        }
    }

    private static async Task Until(Func<Task<bool>> so, string what)
    {
        for (var began = Stopwatch.GetTimestamp(); !await so(); await Task.Delay(Look))
            if (Stopwatch.GetElapsedTime(began) > Patience) throw new TimeoutException($"Waited in vain for {what}.");
    }
}
