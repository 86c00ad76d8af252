using CoachOffice.Data.PostgreSql;
using CoachOffice.Data.Sqlite;
using CoachOffice.Domain;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data.Moving;

/// <summary>One of the two databases of a move, with a context of its own.</summary>
internal sealed class MoveSide : IAsyncDisposable
{
    private readonly OfficeDatabase _database;
    private readonly IDatabaseKeeper _keeper;

    public MoveSide(OfficeDatabase database)
    {
        _database = database;
        Db = new OfficeDb(database.Options());
        (_keeper, Mover) = database.Provider == DatabaseProvider.Sqlite
            ? ((IDatabaseKeeper)new SqliteKeeper(Db), (IRowMover)new SqliteRowMover(Db))
            : (new PostgreSqlKeeper(Db), new PostgreSqlRowMover(Db));
        Tables = OfficeTables.Of(Db);
    }

    public OfficeDb Db { get; }

    public IRowMover Mover { get; }

    public IReadOnlyList<MovedTable> Tables { get; }

    /// <summary>Makes the schema here, where it is missing or older.</summary>
    public Task<Refusal?> Prepare(CancellationToken stop) => new PrepareDatabase(Db, _keeper).Now(stop);

    /// <summary>Null when an office of this very version stands here.</summary>
    public async Task<Refusal?> IsOffice(CancellationToken stop)
    {
        if (!await Db.Database.CanConnectAsync(stop)) return new Refusal("move-nothing-there", "There is no database where the practice should come from, or it does not answer.");
        var applied = await _keeper.Applied(stop);
        return applied.Count > 0 && applied[^1] == Db.Database.GetMigrations().Last()
            ? null
            : new Refusal("move-other-version", "The practice to be moved was made by another version of CoachOffice, or is none. Start this version on it once, stop it, then move.");
    }

    /// <summary>The last migration this database has had.</summary>
    public async Task<string> Migration(CancellationToken stop) => (await _keeper.Applied(stop))[^1];

    /// <summary>The tables that hold rows already.</summary>
    public async Task<IReadOnlyList<string>> Filled(CancellationToken stop)
    {
        var filled = new List<string>();
        foreach (var table in Tables)
        {
            if (await Db.CountRows(table.Name, stop) > 0) filled.Add(table.Name);
        }

        return filled;
    }

    public async ValueTask DisposeAsync()
    {
        await Db.DisposeAsync();
        _database.LetGo();
    }
}
