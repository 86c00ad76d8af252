using System.Data.Common;
using System.Runtime.CompilerServices;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace CoachOffice.Data.Sqlite;

/// <summary>Settings that SQLite keeps per connection; the pool hands the same one out again and again, so each is told once.</summary>
/// <remarks>
/// busy_timeout: without it the client retries a locked file every 150 ms, which made contended writes about 90 times slower.
/// secure_delete: what was erased is overwritten in the file, not only unlinked.
/// </remarks>
internal sealed class SqliteConnectionSettings : DbConnectionInterceptor
{
    private const string Sql = "PRAGMA busy_timeout=5000; PRAGMA secure_delete=ON;";

    private readonly ConditionalWeakTable<object, object> _told = [];

    public static SqliteConnectionSettings Instance { get; } = new();

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        if (IsTold(connection)) return;
        using var command = connection.CreateCommand();
        command.CommandText = Sql;
        command.ExecuteNonQuery();
        Note(connection);
    }

    public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        if (IsTold(connection)) return;
        await using var command = connection.CreateCommand();
        command.CommandText = Sql;
        await command.ExecuteNonQueryAsync(cancellationToken);
        Note(connection);
    }

    private bool IsTold(DbConnection connection) => connection is SqliteConnection { Handle: { } handle } && _told.TryGetValue(handle, out _);

    private void Note(DbConnection connection)
    {
        if (connection is SqliteConnection { Handle: { } handle }) _told.AddOrUpdate(handle, Sql);
    }
}
