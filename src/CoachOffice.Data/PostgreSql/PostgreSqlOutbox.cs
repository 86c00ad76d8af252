using CoachOffice.Data.FollowUps;
using NodaTime;

namespace CoachOffice.Data.PostgreSql;

/// <summary>Rows another node is taking are skipped, not waited for; any number of nodes sweep at once.</summary>
internal sealed class PostgreSqlOutbox(OfficeDb db) : Outbox(db, lockClause: "FOR UPDATE OF m SKIP LOCKED")
{
    public override Task<IAsyncDisposable?> Turn(string owner, Instant now, CancellationToken stop) => Task.FromResult<IAsyncDisposable?>(EveryNode.Instance);

    private sealed class EveryNode : IAsyncDisposable
    {
        public static EveryNode Instance { get; } = new();

        public ValueTask DisposeAsync() => ValueTask.CompletedTask;
    }
}
