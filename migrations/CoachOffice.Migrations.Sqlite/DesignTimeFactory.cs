using CoachOffice.Data;
using Microsoft.EntityFrameworkCore.Design;

namespace CoachOffice.Migrations.Sqlite;

/// <summary>What the migration tool makes its context with; nothing is opened while a migration is written.</summary>
public sealed class DesignTimeFactory : IDesignTimeDbContextFactory<OfficeDb>
{
    public OfficeDb CreateDbContext(string[] args)
    {
        ArgumentNullException.ThrowIfNull(args);
        var connection = args.Length > 0 ? args[0] : "Data Source=design-time.db";
        return new OfficeDb(new OfficeDatabase(DatabaseProvider.Sqlite, connection).Options());
    }
}
