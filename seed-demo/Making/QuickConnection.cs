using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace CoachOffice.SeedDemo.Making;

/// <summary>The file in the making is thrown away after a crash, so nothing waits for the disk.</summary>
internal sealed class QuickConnection : DbConnectionInterceptor
{
    private const string Sql = "PRAGMA synchronous=OFF; PRAGMA secure_delete=OFF; PRAGMA temp_store=MEMORY;";

    public static QuickConnection Instance { get; } = new();

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
