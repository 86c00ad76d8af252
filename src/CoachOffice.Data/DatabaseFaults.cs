using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace CoachOffice.Data;

/// <summary>Tells expected refusals of a database from defects.</summary>
public static class DatabaseFaults
{
    private const int SqliteUnique = 2067;
    private const int SqlitePrimaryKey = 1555;
    private const int SqliteNoDatabase = 26;
    private const int SqliteFull = 13;

    /// <summary>True when there is no room left for what was to be saved; nothing of it was.</summary>
    public static bool IsFull(Exception fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        return fault.GetBaseException() is SqliteException { SqliteErrorCode: SqliteFull } or PostgresException { SqlState: PostgresErrorCodes.DiskFull };
    }

    /// <summary>What a database that cannot be used at all says, for whoever started the program.</summary>
    public static string AtStart(DbException fault) => fault switch
    {
        SqliteException { SqliteErrorCode: SqliteNoDatabase } => "office.db in the data folder is damaged, or no database at all. Put a copy of it in its place.",
        SqliteException sqlite => $"The database in the data folder cannot be used: {sqlite.Message}",
        _ => $"The database does not answer: {fault.Message} Look at Office:Database:ConnectionString, and whether the server runs.",
    };

    /// <summary>True when a time was taken already: the database's own refusal, should the program ever forget to ask.</summary>
    public static bool IsTimeTaken(DbUpdateException fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        return fault.GetBaseException() switch
        {
            SqliteException sqlite => sqlite.Message.Contains("time_taken", StringComparison.Ordinal),
            PostgresException postgres => postgres.SqlState == PostgresErrorCodes.ExclusionViolation,
            _ => false,
        };
    }

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
