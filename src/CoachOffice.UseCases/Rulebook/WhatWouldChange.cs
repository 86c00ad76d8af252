using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Tells which drafts an edited rulebook would change, while the comparison runs and after. Only the account that began it sees it.</summary>
public sealed class WhatWouldChange(OfficeDb db, Replays replays)
{
    /// <summary>What is known by now, or a refusal when this account began none here (or the program was started again since).</summary>
    public async Task<Outcome<ReplayView>> For(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (actor.Account is not { } account || replays.Of(account) is not { } run)
            return new Refusal("comparison-not-found", "No comparison is under way; begin it again.");
        var state = run.State;
        return new ReplayView
        {
            State = state,
            InForce = run.Replay.InForce,
            Edited = run.Replay.Edited,
            Difference = run.Replay.Difference,
            Whole = run.Replay.Reach.Whole,
            Counts = run.Tally.Counts(),
            Rows = await Rows(run.Tally, stop),
        };
    }

    private async Task<IReadOnlyList<ReplayRow>> Rows(ReplayTally tally, CancellationToken stop)
    {
        var rows = tally.Rows();
        var ids = rows.Select(r => r.Lesson).ToList();
        var lessons = await db.Lessons.AsNoTracking().Where(l => ids.Contains(l.Id))
            .Join(db.Students, l => l.StudentId, s => s.Id, (l, s) => new { l.Id, l.HeldOn, l.Club, s.GivenName, s.FamilyName }).ToDictionaryAsync(l => l.Id, stop);
        return [.. from row in rows
                   where lessons.ContainsKey(row.Lesson)
                   let lesson = lessons[row.Lesson]
                   select new ReplayRow
                   {
                       Lesson = row.Lesson,
                       Student = row.Student,
                       StudentName = $"{lesson.GivenName} {lesson.FamilyName}".Trim(),
                       HeldOn = lesson.HeldOn,
                       Club = lesson.Club,
                       Difference = row.Difference,
                   }];
    }
}
