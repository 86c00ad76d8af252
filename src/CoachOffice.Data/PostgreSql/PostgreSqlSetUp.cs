using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data.PostgreSql;

internal static class PostgreSqlSetUp
{
    private const string Migrations = "CoachOffice.Migrations.PostgreSql";

    public static void Configure(DbContextOptionsBuilder options, string connectionString) =>
        options.UseNpgsql(connectionString, npgsql => npgsql.MigrationsAssembly(Migrations)).UseCompiledModel(Migrations);
}
