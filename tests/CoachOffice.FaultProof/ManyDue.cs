using System.Data.Common;
using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.FaultProof;

/// <summary>Many students with a plan and one message due each, copied row by row from one who got theirs by the office's own operations. Ids are made of a series and a number.</summary>
public sealed class ManyDue(OfficeDb db)
{
    private readonly bool _sqlite = db.Database.ProviderName!.EndsWith("Sqlite", StringComparison.Ordinal);

    /// <summary>Adds them.</summary>
    /// <param name="template">The plan that is copied.</param>
    /// <param name="kind">The one of its messages that is copied with it, waiting and due.</param>
    /// <param name="count">How many.</param>
    /// <param name="series">Another one at each call.</param>
    public async Task Add(PlanId template, MessageKind kind, int count, int series)
    {
        var plan = await db.Plans.AsNoTracking().Include(p => p.Stages).SingleAsync(p => p.Id == template);
        var looks = await db.Retests.AsNoTracking().Where(r => r.PlanId == template).ToListAsync();
        var message = await db.Messages.AsNoTracking().FirstAsync(m => m.PlanId == template && m.Kind == kind);
        var first = series * 0x100;
        await using var transaction = await db.Database.BeginTransactionAsync();
        (string, string) student = ("StudentId", Id(first)), lesson = ("LessonId", Id(first + 1)), ofPlan = ("PlanId", Id(first + 3));
        await Copy("Students", plan.StudentId.Value, count, ("Id", Id(first)), ("Email", $"'pupil' || i || '.{series}@example.org'"));
        await Copy("Lessons", plan.LessonId.Value, count, ("Id", Id(first + 1)), student);
        await Copy("StoredDrafts", plan.DraftId.Value, count, ("Id", Id(first + 2)), student, lesson);
        await Copy("Plans", plan.Id.Value, count, ("Id", Id(first + 3)), ("DraftId", Id(first + 2)), student, lesson);
        var stages = plan.Stages.Select((s, n) => (s.Id, Series: first + 0x10 + n)).ToDictionary(s => s.Id, s => s.Series);
        foreach (var (id, number) in stages) await Copy("PlanStages", id, count, ("Id", Id(number)), ofPlan);
        for (var n = 0; n < looks.Count; n++)
        {
            List<(string, string)> anew = [("Id", Id(first + 0x40 + n)), ofPlan, student];
            if (looks[n].StageId is { } stage) anew.Add(("StageId", Id(stages[stage])));
            await Copy("Retests", looks[n].Id, count, [.. anew]);
        }

        List<(string, string)> words = [("Id", InTurn(series)), ofPlan, student, ("OnceKey", $"'{Terms.Of(kind)}|{series}|' || i"), ("State", $"'{Terms.Of(MessageState.Waiting)}'"), ("Attempts", "0"), ("SentAt", "NULL")];
        if (looks.FindIndex(l => l.Id == message.SubjectId) is >= 0 and var asked) words.Add(("SubjectId", Id(first + 0x40 + asked)));
        await Copy("Messages", message.Id, count, [.. words]);
        await transaction.CommitAsync();
    }

    private string Id(int series) => _sqlite
        ? $"printf('{series:X8}-0000-7000-8000-%012X', i)"
        : $"('{series:x8}-0000-7000-8000-' || lpad(to_hex(i), 12, '0'))::uuid";

    // Ordered by these, messages of several series take turns.
    private string InTurn(int series) => _sqlite
        ? $"printf('%08X-{series:X4}-7000-8000-000000000000', i)"
        : $"(lpad(to_hex(i), 8, '0') || '-{series:x4}-7000-8000-000000000000')::uuid";

    private async Task Copy(string table, Guid id, int count, params (string Column, string Sql)[] anew)
    {
        var columns = await Columns(table);
        var values = columns.Select(c => anew.FirstOrDefault(a => a.Column == c).Sql ?? $"t.\"{c}\"");
        var numbers = _sqlite
            ? $"(WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {count}) SELECT i FROM n)"
            : $"(SELECT g::bigint AS i FROM generate_series(1, {count}) AS g)";
        var sql = $"INSERT INTO \"{table}\" ({string.Join(", ", columns.Select(c => $"\"{c}\""))}) SELECT {string.Join(", ", values)} FROM {numbers} AS n CROSS JOIN \"{table}\" AS t WHERE t.\"Id\" = {{0}}";
        await db.Database.ExecuteSqlRawAsync(sql, id);
    }

    private async Task<IReadOnlyList<string>> Columns(string table)
    {
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = $"SELECT * FROM \"{table}\" LIMIT 0";
        command.Transaction = db.Database.CurrentTransaction is { } open ? Microsoft.EntityFrameworkCore.Storage.DbContextTransactionExtensions.GetDbTransaction(open) : null;
        await using DbDataReader reader = await command.ExecuteReaderAsync();
        return [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetName)];
    }
}
