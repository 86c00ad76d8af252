using CoachOffice.Data;
using CoachOffice.Data.Students;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Merging;

/// <summary>Looks after records that became part of another: what was saved for one of them at the very moment of its merge, by somebody who had it open, comes over too.</summary>
public sealed class SweepSignposts(OfficeDb db, MergeMoves moves, AuditTrail trail)
{
    private const string Signposts = """SELECT "Id" FROM "Students" WHERE "MergedInto" IS NOT NULL AND "Id" <> {0}""";

    /// <summary>One sweep; gives of how many records something came over.</summary>
    public async Task<int> Once(CancellationToken stop)
    {
        if (!await db.Students.AnyAsync(s => s.MergedInto != null, stop)) return 0;
        var named = (await StudentTies.Named(db, Signposts, Guid.Empty, ["Students"], stop)).ConvertAll(StudentId.From);
        var late = await db.Students.AsNoTracking().Where(s => named.Contains(s.Id)).Select(s => new { s.Id, s.MergedInto }).ToListAsync(stop);
        foreach (var signpost in late)
        {
            await using var transaction = await db.Database.BeginTransactionAsync(stop);
            trail.Add(Actor.Clock, "student-merged-late", AuditSubject.Of(signpost.MergedInto!.Value), $"from:{signpost.Id.Value}");
            await db.SaveChangesAsync(stop);
            await moves.Move(signpost.MergedInto.Value, signpost.Id, null, stop);
            await transaction.CommitAsync(stop);
        }

        return late.Count;
    }
}
