using System.Globalization;
using CoachOffice.Data;
using CoachOffice.Data.Students;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Merging;

/// <summary>Moves everything that names a student to another record of theirs, in the caller's transaction. Each column that names a student stands in one of two lists; a test reads the mappings and fails for one that stands in none.</summary>
public sealed class MergeMoves(OfficeDb db, PracticeClock clock)
{
    /// <summary>Columns whose rows simply change hands.</summary>
    public static IReadOnlyList<StudentTie> Plain { get; } =
    [
        .. new[] { "CheckIns", "LedgerEntries", "LessonInputs", "Lessons", "MailBounces", "MediaItems", "Packages", "Plans", "RemoteReviews", "Retests", "Seats", "StoredDrafts", "WaitingPlaces" }.Select(table => new StudentTie(table, "StudentId")),
        new("Students", "MergedInto"),
    ];

    /// <summary>Columns where more is to be thought of.</summary>
    public static IReadOnlyList<StudentTie> WithCare { get; } =
        [.. new[] { "BroughtStudents", "CalendarFeeds", "DeviceFiles", "GroupMembers", "MediaConsents", "Messages", "PrivateLinks" }.Select(table => new StudentTie(table, "StudentId"))];

    internal async Task Move(StudentId stays, StudentId goes, AccountId? by, CancellationToken stop)
    {
        await Consents(stays, goes, by, stop);
        await Times(stays, goes, stop);
        await Files(stays, goes, stop);
        await Messages(stays, goes, stop);
        var open = await db.PrivateLinks.Where(l => l.StudentId == goes && l.RevokedAt == null).ToListAsync(stop);
        foreach (var link in open) link.Revoke(clock.Now);
        await db.SaveChangesAsync(stop);
        var now = clock.Now;
        await db.CalendarFeeds.Where(f => f.StudentId == goes && f.RevokedAt == null).ExecuteUpdateAsync(f => f.SetProperty(x => x.RevokedAt, now), stop);
        await db.GroupMembers.Where(m => m.StudentId == goes && db.GroupMembers.Any(o => o.GroupId == m.GroupId && o.StudentId == stays)).ExecuteDeleteAsync(stop);

        // A list of students that is taken back must not take the one who stays along.
        await db.BroughtStudents.Where(b => b.StudentId == goes).ExecuteDeleteAsync(stop);

        // A calendar that was read before shows the other name: its bookings count as saved.
        await db.Bookings.Where(b => b.Seats.Any(s => s.StudentId == goes)).ExecuteUpdateAsync(b => b.SetProperty(x => x.Version, x => x.Version + 1), stop);
        foreach (var tie in Plain.Concat(WithCare)) await StudentTies.Move(db, tie, goes, stays, stop);
    }

    // The stricter wins: what was withdrawn on one of the records is not brought back by a consent on the other.
    private async Task Consents(StudentId stays, StudentId goes, AccountId? by, CancellationToken stop)
    {
        var all = await db.MediaConsents.Where(c => c.StudentId == stays || c.StudentId == goes).OrderBy(c => c.RecordedAt).ThenBy(c => c.Id).ToListAsync(stop);
        if (!all.GroupBy(c => c.StudentId).Any(g => g.Last().WithdrawnAt is not null)) return;
        foreach (var consent in all) consent.Withdraw(by ?? consent.RecordedBy, clock.Now);
        await db.SaveChangesAsync(stop);
    }

    // Time that is taken never changes, it goes and comes. Where both records came to lessons at one time long ago, one row holds it.
    private async Task Times(StudentId stays, StudentId goes, CancellationToken stop)
    {
        var theirs = await db.TakenTimes.AsNoTracking().Where(t => t.Holder == goes.Value).ToListAsync(stop);
        if (theirs.Count == 0) return;
        var held = await db.TakenTimes.AsNoTracking().Where(t => t.Holder == stays.Value).ToListAsync(stop);
        await db.TakenTimes.Where(t => t.Holder == goes.Value).ExecuteDeleteAsync(stop);
        db.TakenTimes.AddRange(theirs.Where(t => !held.Exists(h => h.From < t.Until && h.Until > t.From)).Select(t => t.By(TimeHolder.Of(stays))));
        await db.SaveChangesAsync(stop);
    }

    // The same file of a launch monitor may have been brought for both: it stays known once.
    private Task<int> Files(StudentId stays, StudentId goes, CancellationToken stop) =>
        db.DeviceFiles.Where(f => f.StudentId == goes && db.DeviceFiles.Any(o => o.StudentId == stays && o.ImportedSha256 == f.ImportedSha256))
            .ExecuteUpdateAsync(f => f.SetProperty(x => x.ImportedSha256, (string?)null), stop);

    // The key of a cause names the student: without this the same cause would write a second message. Where both had the same cause, the key of the one who stays holds it.
    private Task<int> Messages(StudentId stays, StudentId goes, CancellationToken stop)
    {
        var (old, now) = (KeyPart(goes), KeyPart(stays));
        return db.Messages.Where(m => m.StudentId == goes && !db.Messages.Any(o => o.OnceKey == m.OnceKey.Replace(old, now)))
            .ExecuteUpdateAsync(m => m.SetProperty(x => x.OnceKey, x => x.OnceKey.Replace(old, now)), stop);
    }

    private static string KeyPart(StudentId student) => string.Create(CultureInfo.InvariantCulture, $"|{student.Value:N}|");
}
