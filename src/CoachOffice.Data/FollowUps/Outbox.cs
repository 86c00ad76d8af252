using CoachOffice.Data.Columns;
using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.Data.FollowUps;

/// <summary>The outbox in the SQL both databases share; only the lock on the rows chosen differs.</summary>
internal abstract class Outbox(OfficeDb db, string lockClause) : IOutbox
{
    // Enumerated words and table names only; every value is a parameter.
    private readonly string _claim = $$"""
        UPDATE "Messages" SET "LeaseUntil" = {0}, "ClaimedBy" = {1}, "Attempts" = "Attempts" + 1
        WHERE "Id" IN (
            SELECT m."Id" FROM "Messages" AS m
            LEFT JOIN "Plans" AS p ON p."Id" = m."PlanId" LEFT JOIN "Students" AS s ON s."Id" = m."StudentId"
            WHERE m."State" = '{{Terms.Of(MessageState.Waiting)}}' AND m."DueAt" <= {2} AND (m."LeaseUntil" IS NULL OR m."LeaseUntil" < {2})
            AND (m."PlanId" IS NULL OR p."Status" = '{{Terms.Of(PlanStatus.Active)}}' OR (p."Status" = '{{Terms.Of(PlanStatus.Completed)}}' AND m."Kind" = '{{Terms.Of(MessageKind.SecondLook)}}')) AND s."ArchivedAt" IS NULL AND s."ErasedAt" IS NULL
            AND (m."PlanId" IS NULL OR s."MessagesStoppedAt" IS NULL OR m."Kind" = '{{Terms.Of(MessageKind.PlanDelivery)}}')
            ORDER BY m."Attempts", m."DueAt", m."Id" LIMIT {3} {{lockClause}})
        RETURNING *
        """;

    public async Task<IReadOnlyList<Message>> Claim(ClaimOrder order, CancellationToken stop)
    {
        var (now, until) = (Instants.ToColumn(order.Now), Instants.ToColumn(order.Now + order.Lease));
        var claimed = await db.Messages.FromSqlRaw(_claim, until, order.Owner, now, order.Most).AsNoTracking().ToListAsync(stop);
        return [.. claimed.OrderBy(m => m.Attempts).ThenBy(m => m.DueAt).ThenBy(m => m.Id)];
    }

    public Task<bool> MarkBegun(Sending sending, CancellationToken stop) =>
        One(Held(sending).ExecuteUpdateAsync(m => m.SetProperty(x => x.SendingAt, sending.Now), stop));

    public Task<bool> PutOff(Sending sending, Instant again, CancellationToken stop) => One(Held(sending).ExecuteUpdateAsync(
        m => m.SetProperty(x => x.DueAt, again).SetProperty(x => x.Attempts, x => x.Attempts - 1)
            .SetProperty(x => x.LeaseUntil, (Instant?)null).SetProperty(x => x.ClaimedBy, (string?)null),
        stop));

    public Task<bool> Skip(Sending sending, string why, CancellationToken stop) => One(Held(sending).ExecuteUpdateAsync(
        m => m.SetProperty(x => x.State, MessageState.Skipped).SetProperty(x => x.LastProblem, why)
            .SetProperty(x => x.LeaseUntil, (Instant?)null).SetProperty(x => x.ClaimedBy, (string?)null),
        stop));

    public Task<bool> MarkSent(Sending sending, CancellationToken stop) => One(InFlight(sending).ExecuteUpdateAsync(
        m => m.SetProperty(x => x.State, MessageState.Sent).SetProperty(x => x.SentAt, sending.Now).SetProperty(x => x.LastProblem, (string?)null)
            .SetProperty(x => x.LeaseUntil, (Instant?)null).SetProperty(x => x.ClaimedBy, (string?)null).SetProperty(x => x.SendingAt, (Instant?)null),
        stop));

    public async Task<bool> MarkFailed(Sending sending, string problem, Instant? again, CancellationToken stop)
    {
        var noted = again is { } due
            ? InFlight(sending).ExecuteUpdateAsync(m => m.SetProperty(x => x.DueAt, due).SetProperty(x => x.LastProblem, problem)
                .SetProperty(x => x.LeaseUntil, (Instant?)null).SetProperty(x => x.ClaimedBy, (string?)null).SetProperty(x => x.SendingAt, (Instant?)null), stop)
            : InFlight(sending).ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.NeedsAttention).SetProperty(x => x.LastProblem, problem)
                .SetProperty(x => x.LeaseUntil, (Instant?)null).SetProperty(x => x.ClaimedBy, (string?)null).SetProperty(x => x.SendingAt, (Instant?)null), stop);
        return await One(noted);
    }

    public Task<bool> GiveBack(Sending sending, CancellationToken stop) => One(Held(sending).ExecuteUpdateAsync(
        m => m.SetProperty(x => x.Attempts, x => x.Attempts - 1)
            .SetProperty(x => x.LeaseUntil, (Instant?)null).SetProperty(x => x.ClaimedBy, (string?)null).SetProperty(x => x.SendingAt, (Instant?)null),
        stop));

    private IQueryable<Message> Held(Sending sending) =>
        db.Messages.Where(m => m.Id == sending.MessageId && m.ClaimedBy == sending.Owner && m.State == MessageState.Waiting);

    // A pause that came while the message was on its way does not undo that it went.
    private IQueryable<Message> InFlight(Sending sending) =>
        db.Messages.Where(m => m.Id == sending.MessageId && m.ClaimedBy == sending.Owner && (m.State == MessageState.Waiting || m.State == MessageState.Held));

    private static async Task<bool> One(Task<int> rows) => await rows == 1;
}
