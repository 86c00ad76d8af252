using CoachOffice.Data.Columns;
using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.FollowUps;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.Data.Sqlite;

/// <summary>One writer at a time: the statement itself is the lock. A file has one sweep, and its lock file ends with the program that holds it.</summary>
internal sealed class SqliteOutbox(OfficeDb db) : Outbox(db, lockClause: "")
{
    public override async Task<IAsyncDisposable?> Turn(string owner, Instant now, CancellationToken stop)
    {
        var file = Path.GetFullPath(new SqliteConnectionStringBuilder(Db.Database.GetConnectionString()).DataSource);
        if (FileHold.Try(file + ".sending") is not { } turn) return null;
        var past = now - Duration.FromMilliseconds(1);
        await Db.Messages.Where(m => m.LeaseUntil != null && m.ClaimedBy != owner && m.State == MessageState.Waiting).ExecuteUpdateAsync(m => m.SetProperty(x => x.LeaseUntil, past), stop);
        return turn;
    }
}
