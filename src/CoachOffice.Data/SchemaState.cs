using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data;

/// <summary>Whether the database still has this program's schema: another node may be of a newer version.</summary>
public sealed class SchemaState
{
    private readonly OfficeDb _db;
    private readonly IDatabaseKeeper _keeper;

    internal SchemaState(OfficeDb db, IDatabaseKeeper keeper) => (_db, _keeper) = (db, keeper);

    /// <summary>True when every migration of this program was applied, and none it does not know.</summary>
    public async Task<bool> IsThisPrograms(CancellationToken stop) => (await _keeper.Applied(stop)).SequenceEqual(_db.Database.GetMigrations(), StringComparer.Ordinal);
}
