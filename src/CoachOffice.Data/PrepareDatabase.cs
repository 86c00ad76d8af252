using CoachOffice.Domain;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data;

/// <summary>Brings the database to this program's schema at start-up.</summary>
public sealed class PrepareDatabase
{
    private readonly OfficeDb _db;
    private readonly IDatabaseKeeper _keeper;

    internal PrepareDatabase(OfficeDb db, IDatabaseKeeper keeper) => (_db, _keeper) = (db, keeper);

    /// <summary>Copies, migrates and sets the backstops. Null when the database is ready; a refusal when it was made by a newer program.</summary>
    public async Task<Refusal?> Now(CancellationToken stop)
    {
        await using var alone = await _keeper.Alone(stop);
        var known = _db.Database.GetMigrations().ToList();
        var applied = await _keeper.Applied(stop);
        if (applied.Except(known, StringComparer.Ordinal).FirstOrDefault() is { } newer)
        {
            return new Refusal("database-newer", $"This database was made by a newer version of CoachOffice (it holds '{newer}'). Start that version, or open a copy made before it.");
        }

        if (applied.Count == 0) await _db.Run(await WrittenSchema.Of(_db, stop), stop);
        else if (applied.Count < known.Count) await Update(applied[^1], stop);

        await _keeper.EnsureBackstops(stop);
        return null;
    }

    /// <summary>Only when something is due: EF compares whole models first, a fifth of a cold start.</summary>
    private async Task Update(string lastMigration, CancellationToken stop)
    {
        await _keeper.Copy(lastMigration, stop);
        await _db.Database.MigrateAsync(stop);
    }
}
