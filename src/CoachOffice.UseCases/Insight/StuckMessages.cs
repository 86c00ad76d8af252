using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Insight;

/// <summary>Messages that did not go and wait for a person.</summary>
public sealed class StuckMessages(OfficeDb db, OfficeLetters letters)
{
    private static readonly CompiledQuery<int, TodayMessage> Stuck = new((db, most) =>
        (from message in db.Messages
         from student in db.Students.Where(s => s.Id == message.StudentId).DefaultIfEmpty()
         where message.State == MessageState.NeedsAttention || message.State == MessageState.Unknown
         orderby message.DueAt, message.Id
         select new TodayMessage(message.Id, message.StudentId, student == null ? "" : (student.GivenName + " " + student.FamilyName).Trim(), message.Kind, message.LastProblem ?? "unknown")).Take(most));

    internal async Task<IReadOnlyList<TodayMessage>> Now(int most, CancellationToken stop)
    {
        var stuck = await Stuck.Rows(db, most, stop);
        for (var n = 0; n < stuck.Count; n++) stuck[n] = stuck[n] with { Problem = Problems.InWords(stuck[n].Problem), Name = await NameOf(stuck[n], stop) };
        return stuck;
    }

    private async Task<string> NameOf(TodayMessage row, CancellationToken stop) =>
        row.StudentId is null ? await letters.Addressee(await db.Messages.AsNoTracking().SingleAsync(m => m.Id == row.Id, stop), stop) : row.Name;
}
