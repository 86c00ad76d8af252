using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace CoachOffice.Data;

/// <summary>Tells expected refusals of a database from defects.</summary>
public static class DatabaseFaults
{
    private const int SqliteUnique = 2067;
    private const int SqlitePrimaryKey = 1555;

    /// <summary>True when a row with the same unique key was there already: the same thing done twice, or two at once.</summary>
    public static bool IsDuplicate(DbUpdateException fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        return fault.GetBaseException() switch
        {
            SqliteException sqlite => sqlite.SqliteExtendedErrorCode is SqliteUnique or SqlitePrimaryKey,
            PostgresException postgres => postgres.SqlState == PostgresErrorCodes.UniqueViolation,
            _ => false,
        };
    }
}
