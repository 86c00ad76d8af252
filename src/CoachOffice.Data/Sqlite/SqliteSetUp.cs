using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data.Sqlite;

internal static class SqliteSetUp
{
    private const string Migrations = "CoachOffice.Migrations.Sqlite";

    public static void Configure(DbContextOptionsBuilder options, string connectionString) =>
        options.UseSqlite(connectionString, sqlite => sqlite.MigrationsAssembly(Migrations))
            .UseCompiledModel(Migrations)
            .AddInterceptors(SqliteConnectionSettings.Instance);

    public static void LetGo(string connectionString)
    {
        using var connection = new SqliteConnection(connectionString);
        SqliteConnection.ClearPool(connection);
    }
}
