using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Data.FollowUps;

/// <summary>Statements of the outbox. Enumerated words and table names only; every value is a parameter.</summary>
internal static class OutboxSql
{
    private const string Tables = """
        "Messages" AS m LEFT JOIN "Plans" AS p ON p."Id" = m."PlanId" LEFT JOIN "Students" AS s ON s."Id" = m."StudentId"
        """;

    // What may go out at all: asked at the claim and once more just before handing over, so that a stop holds for what is queued already.
    private static readonly string MayGo = $"""
        m."State" = '{Terms.Of(MessageState.Waiting)}'
            AND (m."PlanId" IS NULL OR p."Status" = '{Terms.Of(PlanStatus.Active)}' OR (p."Status" = '{Terms.Of(PlanStatus.Completed)}' AND m."Kind" = '{Terms.Of(MessageKind.SecondLook)}')) AND s."ArchivedAt" IS NULL AND s."ErasedAt" IS NULL
            {Stop("MessagesStoppedAt", MessagePurpose.Encouragement)} {Stop("AppointmentsStoppedAt", MessagePurpose.Appointment)} {Stop("MoneyStoppedAt", MessagePurpose.Money)}
        """;

    // What is claimed nevertheless, as a person has to learn of it, and yet never goes: a plan to who stopped plans, anything once a guardian withdrew.
    private static readonly string MayLeave = $"""
        {MayGo} {Stop("PlansStoppedAt", MessagePurpose.Plan)}
            AND (s."GuardianWithdrewAt" IS NULL OR m."Kind" IN ({Words([.. Enum.GetValues<MessageKind>().Where(k => MessagePurposes.Of(k) == MessagePurpose.Office)])}))
        """;

    /// <summary>How many messages of this id an owner may hand over now: one or none.</summary>
    public static readonly string Wanted = $"""SELECT COUNT(*) FROM {Tables} WHERE m."Id" = @id AND m."ClaimedBy" = @owner AND {MayLeave}""";

    /// <summary>Handing over begins: when, which, whose.</summary>
    public static readonly string Begin = $$"""
        UPDATE "Messages" SET "SendingAt" = {0} WHERE "Id" IN (SELECT m."Id" FROM {{Tables}} WHERE m."Id" = {1} AND m."ClaimedBy" = {2} AND {{MayLeave}})
        """;

    /// <summary>It left: when, which, whose. What was taken back or paused while it was on its way has gone nevertheless.</summary>
    public static readonly string Sent = $$"""
        UPDATE "Messages" SET "State" = '{{Terms.Of(MessageState.Sent)}}', "SentAt" = {0}, "LastProblem" = NULL, "LeaseUntil" = NULL, "ClaimedBy" = NULL, "SendingAt" = NULL
        WHERE "Id" = {1} AND "ClaimedBy" = {2} AND "State" IN ('{{Terms.Of(MessageState.Waiting)}}', '{{Terms.Of(MessageState.Held)}}', '{{Terms.Of(MessageState.Skipped)}}')
        """;

    private static string Stop(string column, MessagePurpose purpose) =>
        MessagePurposes.EndedBy(purpose) is { Count: > 0 } kinds ? $"""AND (s."{column}" IS NULL OR m."Kind" NOT IN ({Words(kinds)}))""" : "";

    private static string Words(IReadOnlyList<MessageKind> kinds) => string.Join(", ", kinds.Select(k => $"'{Terms.Of(k)}'"));

    // The due time is hidden from the choice of an index: by the order's own the first ones are found at once, by that of the due time all that is due is read and sorted at each claim.
    /// <summary>Takes due messages in order: until when, for whom, now, how many, the latest end a lease can have.</summary>
    public static string Claim(string free, string lockClause) => $$"""
        UPDATE "Messages" SET "LeaseUntil" = {0}, "ClaimedBy" = {1}, "Attempts" = "Attempts" + 1
        WHERE "Id" IN (
            SELECT m."Id" FROM {{Tables}}
            WHERE COALESCE(m."DueAt", {2}) <= {2} AND {{free}} AND {{MayGo}}
            ORDER BY m."Attempts", m."DueAt", m."Id" LIMIT {3} {{lockClause}})
        RETURNING *
        """;
}
