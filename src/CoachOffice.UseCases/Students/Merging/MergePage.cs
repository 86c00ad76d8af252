using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Media;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Merging;

/// <summary>Shows two records of one person side by side.</summary>
public sealed class MergePage(OfficeDb db, MergeObstacles obstacles, MediaConsents consents)
{
    /// <summary>The two, or why not.</summary>
    public async Task<Outcome<MergeView>> Of(StudentId stays, StudentId goes, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("merge records of students");
        if (stays == goes) return MergeStudents.Same;
        var both = await db.Students.AsNoTracking().Where(s => (s.Id == stays || s.Id == goes) && s.ErasedAt == null).ToDictionaryAsync(s => s.Id, stop);
        if (both.Count < 2) return StudentRefusals.NotFound;
        var wanted = both.Values.Select(s => s.PayerId).OfType<Domain.Ledger.PayerId>().ToList();
        var payers = await db.Payers.AsNoTracking().Where(p => wanted.Contains(p.Id)).ToDictionaryAsync(p => p.Id, p => p.Name, stop);
        var (one, other) = (await consents.Last(stays, stop), await consents.Last(goes, stop));
        return new MergeView
        {
            Stays = both[stays],
            Goes = both[goes],
            Fields = MergeFields.Of(both[stays], both[goes], payers),
            Counts = await Counts(stays, goes, stop),
            InTheWay = await obstacles.Between(stays, goes, stop),
            ConsentEnds = one is not null && other is not null && (one.WithdrawnAt is null) != (other.WithdrawnAt is null),
        };
    }

    private async Task<IReadOnlyList<MergeCount>> Counts(StudentId stays, StudentId goes, CancellationToken stop) =>
    [
        await Count("lessons", db.Lessons.Select(l => l.StudentId), stays, goes, stop),
        await Count("plans", db.Plans.Select(p => p.StudentId), stays, goes, stop),
        await Count("check-ins", db.CheckIns.Select(c => c.StudentId), stays, goes, stop),
        await Count("re-tests", db.Retests.Select(r => r.StudentId), stays, goes, stop),
        await Count("stills and clips", db.MediaItems.Select(m => m.StudentId), stays, goes, stop),
        await Count("bookings", db.Seats.Select(s => s.StudentId), stays, goes, stop),
        await Count("remote reviews", db.RemoteReviews.Select(r => r.StudentId), stays, goes, stop),
        await Count("packages", db.Packages.Select(p => p.StudentId), stays, goes, stop),
        await Count("groups", db.GroupMembers.Select(m => m.StudentId), stays, goes, stop),
    ];

    private static async Task<MergeCount> Count(string what, IQueryable<StudentId> owners, StudentId stays, StudentId goes, CancellationToken stop) =>
        new(what, await owners.CountAsync(s => s == stays, stop), await owners.CountAsync(s => s == goes, stop));
}
