using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data.PostgreSql;

internal static class PostgreSqlSetUp
{
    public static void Configure(DbContextOptionsBuilder options, string connectionString) =>
        options.UseNpgsql(connectionString, npgsql => npgsql.MigrationsAssembly("CoachOffice.Migrations.PostgreSql"));
}
