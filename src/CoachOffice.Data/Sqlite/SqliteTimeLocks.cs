using CoachOffice.Data.Bookings;
using CoachOffice.Domain.Bookings;

namespace CoachOffice.Data.Sqlite;

/// <summary>A transaction of SQLite begins as the only writer (BEGIN IMMEDIATE), so nothing is left to lock.</summary>
internal sealed class SqliteTimeLocks(OfficeDb db) : ITimeLocks
{
    public Task Hold(IReadOnlyList<TimeHolder> holders, CancellationToken stop) =>
        db.Database.CurrentTransaction is null ? throw new InvalidOperationException("Begin a transaction before asking for time.") : Task.CompletedTask;

    public async Task<bool> Try(IReadOnlyList<TimeHolder> holders, CancellationToken stop)
    {
        await Hold(holders, stop);
        return true;
    }
}
