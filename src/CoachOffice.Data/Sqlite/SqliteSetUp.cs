using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data.Sqlite;

internal static class SqliteSetUp
{
    public static void Configure(DbContextOptionsBuilder options, string connectionString) =>
        options.UseSqlite(connectionString, sqlite => sqlite.MigrationsAssembly("CoachOffice.Migrations.Sqlite"))
            .AddInterceptors(SqliteConnectionSettings.Instance);
}
