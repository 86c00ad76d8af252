using CoachOffice.Data.FollowUps;

namespace CoachOffice.Data.Sqlite;

/// <summary>One writer at a time: the statement itself is the lock.</summary>
internal sealed class SqliteOutbox(OfficeDb db) : Outbox(db, lockClause: "");
