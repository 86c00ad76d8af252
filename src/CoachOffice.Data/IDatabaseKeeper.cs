namespace CoachOffice.Data;

/// <summary>What differs by provider when a database is made ready.</summary>
internal interface IDatabaseKeeper
{
    /// <summary>The same in both databases, where its table is there.</summary>
    protected const string History = "SELECT \"MigrationId\" FROM \"__EFMigrationsHistory\" ORDER BY \"MigrationId\"";

    /// <summary>Keeps every other program from preparing the same database until it is disposed.</summary>
    Task<IAsyncDisposable> Alone(CancellationToken stop);

    /// <summary>The migrations this database has had, oldest first; none when it is new.</summary>
    Task<IReadOnlyList<string>> Applied(CancellationToken stop);

    /// <summary>Copies the database before it is changed; nothing where copies are the administrator's.</summary>
    Task Copy(string lastMigration, CancellationToken stop);

    /// <summary>Triggers and constraints the migrations do not make. Safe to run again and again.</summary>
    Task EnsureBackstops(CancellationToken stop);

    /// <summary>Drops what the database's log still holds of rows that are gone; nothing where the log is the administrator's.</summary>
    Task ForgetThePast(CancellationToken stop);
}
