using CoachOffice.Data.FollowUps;

namespace CoachOffice.Data.PostgreSql;

/// <summary>Rows another node is taking are skipped, not waited for.</summary>
internal sealed class PostgreSqlOutbox(OfficeDb db) : Outbox(db, lockClause: "FOR UPDATE OF m SKIP LOCKED");
