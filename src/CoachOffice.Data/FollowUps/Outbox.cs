using CoachOffice.Data.Columns;
using CoachOffice.Domain.FollowUps;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.Data.FollowUps;

/// <summary>The outbox in the SQL both databases share; only the lock on the rows chosen and the right to sweep differ.</summary>
internal abstract class Outbox(OfficeDb db, string lockClause) : IOutbox
{
    // No lease runs longer than its order says, give or take what two machines' clocks differ: one that does was written before the clock was set back.
    private static readonly Duration Skew = Duration.FromMinutes(10);

    private readonly string _claimNew = OutboxSql.Claim("m.\"LeaseUntil\" IS NULL", lockClause);
    private readonly string _claimLeft = OutboxSql.Claim("(m.\"LeaseUntil\" < {2} OR m.\"LeaseUntil\" > {4})", lockClause);

    protected OfficeDb Db => db;

    public abstract Task<IAsyncDisposable?> Turn(string owner, Instant now, CancellationToken stop);

    public async Task<IReadOnlyList<Message>> Claim(ClaimOrder order, CancellationToken stop)
    {
        var fresh = await Claim(_claimNew, order, stop);
        return fresh.Count > 0 ? fresh : await Claim(_claimLeft, order with { Most = 1 }, stop);
    }

    public async Task<bool> IsStillWanted(Sending sending, CancellationToken stop) =>
        await db.Count(OutboxSql.Wanted, [("id", sending.MessageId), ("owner", sending.Owner)], stop) == 1;

    public Task<int> Renew(string owner, Instant until, CancellationToken stop) =>
        db.Messages.Where(m => m.ClaimedBy == owner && m.State == MessageState.Waiting && m.LeaseUntil != null).ExecuteUpdateAsync(m => m.SetProperty(x => x.LeaseUntil, until), stop);

    public Task<bool> MarkBegun(Sending sending, CancellationToken stop) =>
        One(db.Database.ExecuteSqlRawAsync(OutboxSql.Begin, [Instants.ToColumn(sending.Now), sending.MessageId, sending.Owner], stop));

    public Task<bool> MarkSent(Sending sending, CancellationToken stop) =>
        One(db.Database.ExecuteSqlRawAsync(OutboxSql.Sent, [Instants.ToColumn(sending.Now), sending.MessageId, sending.Owner], stop));

    public async Task<bool> MarkFailed(Sending sending, string problem, Instant? again, CancellationToken stop)
    {
        var noted = again is { } due
            ? InFlight(sending).ExecuteUpdateAsync(m => m.SetProperty(x => x.DueAt, due).SetProperty(x => x.LastProblem, problem)
                .SetProperty(x => x.LeaseUntil, (Instant?)null).SetProperty(x => x.ClaimedBy, (string?)null).SetProperty(x => x.SendingAt, (Instant?)null), stop)
            : InFlight(sending).ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.NeedsAttention).SetProperty(x => x.LastProblem, problem)
                .SetProperty(x => x.LeaseUntil, (Instant?)null).SetProperty(x => x.ClaimedBy, (string?)null).SetProperty(x => x.SendingAt, (Instant?)null), stop);
        return await One(noted);
    }

    public Task<bool> MarkUnknown(Sending sending, string problem, CancellationToken stop) => One(InFlight(sending).ExecuteUpdateAsync(
        m => m.SetProperty(x => x.State, MessageState.Unknown).SetProperty(x => x.LastProblem, problem).SetProperty(x => x.SendingAt, x => x.SendingAt ?? sending.Now)
            .SetProperty(x => x.LeaseUntil, (Instant?)null).SetProperty(x => x.ClaimedBy, (string?)null),
        stop));

    public Task<bool> PutOff(Sending sending, Instant again, CancellationToken stop) => One(Held(sending).ExecuteUpdateAsync(
        m => m.SetProperty(x => x.DueAt, again).SetProperty(x => x.Attempts, x => x.Attempts - 1)
            .SetProperty(x => x.LeaseUntil, (Instant?)null).SetProperty(x => x.ClaimedBy, (string?)null),
        stop));

    public Task<bool> Skip(Sending sending, string why, CancellationToken stop) => One(Held(sending).ExecuteUpdateAsync(
        m => m.SetProperty(x => x.State, MessageState.Skipped).SetProperty(x => x.LastProblem, why)
            .SetProperty(x => x.LeaseUntil, (Instant?)null).SetProperty(x => x.ClaimedBy, (string?)null),
        stop));

    public Task<int> GiveBack(IReadOnlyList<Guid> messages, string owner, CancellationToken stop) =>
        db.Messages.Where(m => messages.Contains(m.Id) && m.ClaimedBy == owner && m.State == MessageState.Waiting).ExecuteUpdateAsync(
            m => m.SetProperty(x => x.Attempts, x => x.Attempts - 1)
                .SetProperty(x => x.LeaseUntil, (Instant?)null).SetProperty(x => x.ClaimedBy, (string?)null).SetProperty(x => x.SendingAt, (Instant?)null),
            stop);

    private async Task<IReadOnlyList<Message>> Claim(string sql, ClaimOrder order, CancellationToken stop)
    {
        var (now, until, latest) = (Instants.ToColumn(order.Now), Instants.ToColumn(order.Now + order.Lease), Instants.ToColumn(order.Now + order.Lease + Skew));
        var claimed = await db.Messages.FromSqlRaw(sql, until, order.Owner, now, order.Most, latest).AsNoTracking().ToListAsync(stop);
        return [.. claimed.OrderBy(m => m.Attempts).ThenBy(m => m.DueAt).ThenBy(m => m.Id)];
    }

    private IQueryable<Message> Held(Sending sending) =>
        db.Messages.Where(m => m.Id == sending.MessageId && m.ClaimedBy == sending.Owner && m.State == MessageState.Waiting);

    // A pause that came while the message was on its way does not undo that it went.
    private IQueryable<Message> InFlight(Sending sending) =>
        db.Messages.Where(m => m.Id == sending.MessageId && m.ClaimedBy == sending.Owner && (m.State == MessageState.Waiting || m.State == MessageState.Held));

    private static async Task<bool> One(Task<int> rows) => await rows == 1;
}
