using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Media;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Students;

/// <summary>Everything outside the student's own row that a person could be known by, or that is about their body.</summary>
public sealed class StudentTraces(OfficeDb db, MessageFiles letters, MediaFiles media, FileTraces files, INewIds ids)
{
    private const string Erased = "student-erased";

    /// <summary>Empties it and revokes what was open, in the caller's transaction; gives the files that are to be deleted after it.</summary>
    public async Task<StudentFiles> Remove(Student student, Actor actor, Instant now, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(student);
        ArgumentNullException.ThrowIfNull(actor);
        var id = student.Id;
        await FromLessons(id, stop);
        await FromPlans(id, actor, now, stop);
        await FromCheckIns(id, stop);
        await FromRetests(id, now, stop);
        await FromBookings(id, now, stop);
        var sent = await FromReviews(id, now, stop);
        await db.PrivateLinks.Where(l => l.StudentId == id).ExecuteDeleteAsync(stop);
        await db.CalendarFeeds.Where(f => f.StudentId == id).ExecuteDeleteAsync(stop);
        await db.MailBounces.Where(b => b.StudentId == id).ExecuteDeleteAsync(stop);
        await db.GroupMembers.Where(m => m.StudentId == id).ExecuteDeleteAsync(stop);
        IReadOnlyList<string> pictures = [.. await FromMedia(id, stop), .. sent];
        var brought = await files.Remove(id, stop);
        return new StudentFiles([.. brought, .. await FromMessages(id, stop), .. await FromPayer(student, now, stop)], pictures);
    }

    /// <summary>Deletes the files; a picture's only when nobody else is seen in the same one.</summary>
    public async Task Delete(StudentFiles removed, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(removed);
        foreach (var path in removed.Letters.Where(File.Exists)) File.Delete(path);
        await media.DropUnneeded(removed.Pictures, stop);
    }

    // Who is gone comes to no lesson: coach and bay are free again, and a reserved credit goes back.
    private async Task GiveUp(Booking booking, StudentId id, Instant now, CancellationToken stop)
    {
        foreach (var seat in booking.Seats.Where(s => s.StudentId == id && s.IsOpen).ToList())
        {
            booking.Release(seat.Id, SeatStatus.Released, now);
            seat.PayFrom(null);
        }

        var keep = booking.IsOn ? TimeHolder.AllOf(booking).Select(h => h.Id).ToList() : [];
        await db.TakenTimes.Where(t => t.BookingId == booking.Id && !keep.Contains(t.Holder)).ExecuteDeleteAsync(stop);
    }

    // A note may speak of anybody who comes; the lesson itself stays.
    private async Task FromBookings(StudentId id, Instant now, CancellationToken stop)
    {
        var coming = await db.Bookings.Include(b => b.Seats).Where(b => b.Starts > now && b.Seats.Any(s => s.StudentId == id)).ToListAsync(stop);
        foreach (var booking in coming) await GiveUp(booking, id, now, stop);
        await db.SaveChangesAsync(stop);
        var theirs = db.Seats.Where(s => s.StudentId == id).Select(s => s.BookingId);
        await db.Bookings.Where(b => theirs.Contains(b.Id)).ExecuteUpdateAsync(b => b.SetProperty(x => x.Note, ""), stop);
        await db.WaitingPlaces.Where(w => w.StudentId == id && (w.Status == WaitingStatus.Waiting || w.Status == WaitingStatus.Offered))
            .ExecuteUpdateAsync(w => w.SetProperty(x => x.Status, WaitingStatus.Left), stop);
    }

    private async Task<IReadOnlyList<string>> FromReviews(StudentId id, Instant now, CancellationToken stop)
    {
        var reviews = await db.RemoteReviews.Include(r => r.Clips).Where(r => r.StudentId == id).ToListAsync(stop);
        var clips = reviews.SelectMany(r => r.Clips).ToList();
        foreach (var review in reviews.Where(r => r.IsOpen)) review.Withdraw(now);
        db.ReviewClips.RemoveRange(clips);
        await db.SaveChangesAsync(stop);
        await db.RemoteReviews.Where(r => r.StudentId == id).ExecuteUpdateAsync(r => r.SetProperty(x => x.BallFlight, "").SetProperty(x => x.Felt, "").SetProperty(x => x.Numbers, ""), stop);
        return [.. clips.Select(c => c.Sha256)];
    }

    private async Task<IReadOnlyList<string>> FromMedia(StudentId id, CancellationToken stop)
    {
        var theirs = await db.MediaItems.Where(m => m.StudentId == id).Select(m => new { m.Sha256, m.SmallSha256 }).ToListAsync(stop);
        await db.MediaItems.Where(m => m.StudentId == id).ExecuteDeleteAsync(stop);
        await db.MediaConsents.Where(c => c.StudentId == id).ExecuteDeleteAsync(stop);
        return [.. theirs.SelectMany(m => new[] { m.Sha256, m.SmallSha256 })];
    }

    private async Task FromLessons(StudentId id, CancellationToken stop)
    {
        await db.Lessons.Where(l => l.StudentId == id)
            .ExecuteUpdateAsync(l => l.SetProperty(x => x.Observations, "").SetProperty(x => x.Notes, ""), stop);

        var theirs = db.Lessons.Where(l => l.StudentId == id).Select(l => l.Id);
        await db.SheetSends.Where(s => theirs.Contains(s.LessonId)).ExecuteDeleteAsync(stop);
        await db.LessonInputs.Where(i => i.StudentId == id).ExecuteDeleteAsync(stop);

        // A draft's input names the year of birth and the limits.
        await db.StoredDrafts.Where(d => d.StudentId == id)
            .ExecuteUpdateAsync(d => d.SetProperty(x => x.Json, "").SetProperty(x => x.InputJson, "").SetProperty(x => x.InputSha256, ""), stop);
    }

    private async Task FromPlans(StudentId id, Actor actor, Instant now, CancellationToken stop)
    {
        var plans = await db.Plans.Include(p => p.Stages).Where(p => p.StudentId == id).ToListAsync(stop);
        foreach (var plan in plans)
        {
            if (plan.MayBecome(PlanStatus.Revoked)) plan.Become(PlanStatus.Revoked, new PlanStep(ids.Next(), now, actor.Name, Erased));
            plan.Write("");
            plan.Promise("");
            foreach (var stage in plan.Stages) stage.Rewrite([.. stage.Drills.Select(Bare)], stage.Gate with { Text = "" });
        }

        await db.SaveChangesAsync(stop);
        var theirs = db.Plans.Where(p => p.StudentId == id).Select(p => p.Id);
        await db.PlanChanges.Where(c => theirs.Contains(c.PlanId)).ExecuteUpdateAsync(c => c.SetProperty(x => x.Reason, Erased), stop);
        await db.PlanEdits.Where(e => theirs.Contains(e.PlanId))
            .ExecuteUpdateAsync(e => e.SetProperty(x => x.Original, "").SetProperty(x => x.Changed, "").SetProperty(x => x.Comment, ""), stop);
        await db.Plans.Where(p => p.StudentId == id && p.HoldReason != null).ExecuteUpdateAsync(p => p.SetProperty(x => x.HoldReason, Erased), stop);
    }

    /// <summary>What was trained and how much stays; words a coach may have written to the person go.</summary>
    private static PlanDrill Bare(PlanDrill drill) => drill with { Name = drill.Drill, Cue = "", Steps = [], DoneWhen = "" };

    private Task<int> FromCheckIns(StudentId id, CancellationToken stop) =>
        db.CheckIns.Where(c => c.StudentId == id).ExecuteUpdateAsync(
            c => c.SetProperty(x => x.Comment, "").SetProperty(x => x.PainRegion, (Region?)null).SetProperty(x => x.Pain, false).SetProperty(x => x.Emergency, false), stop);

    private async Task FromRetests(StudentId id, Instant now, CancellationToken stop)
    {
        var open = await db.Retests.Where(r => r.StudentId == id && (r.Status == RetestStatus.Ready || r.Status == RetestStatus.InProgress)).ToListAsync(stop);
        foreach (var retest in open) retest.Cancel(now);
        await db.SaveChangesAsync(stop);
        await db.Retests.Where(r => r.StudentId == id).ExecuteUpdateAsync(r => r.SetProperty(x => x.Answer, ""), stop);
    }

    // A household's payer stays while they pay for somebody else who is still here. The ledger and the documents stay as they are: tax law asks to keep
    // them, and GDPR article 17(3)(b) lets them stand; without the payer's row they lead to nobody in the office.
    private async Task<IReadOnlyList<string>> FromPayer(Student student, Instant now, CancellationToken stop)
    {
        var charged = await db.LedgerEntries.Where(e => e.StudentId == student.Id).Select(e => e.PayerId).Distinct().ToListAsync(stop);
        var paths = new List<string>();
        foreach (var id in charged.Concat(student.PayerId is { } own ? [own] : []).Distinct())
        {
            if (await db.Students.AnyAsync(s => s.PayerId == id && s.Id != student.Id && s.ErasedAt == null, stop)) continue;
            (await db.Payers.SingleAsync(p => p.Id == id, stop)).Erase(now);
            paths.AddRange(await ToPayer(id, stop));
        }

        await db.SaveChangesAsync(stop);
        return paths;
    }

    // Receipts in the post: those that wait are not sent any more, and letters kept as files name the payer.
    private async Task<IEnumerable<string>> ToPayer(PayerId id, CancellationToken stop)
    {
        var documents = (await db.LedgerDocuments.Where(d => d.PayerId == id).Select(d => d.Id).ToListAsync(stop)).ConvertAll(d => (Guid?)d.Value);
        documents.Add(id.Value);
        var messages = await db.Messages.Where(m => m.StudentId == null && documents.Contains(m.SubjectId)).ToListAsync(stop);
        foreach (var message in messages) message.Skip(Erased);
        var came = messages.ConvertAll(m => m.Id);
        await db.MailBounces.Where(b => came.Contains(b.MessageId)).ExecuteDeleteAsync(stop);
        return messages.SelectMany(letters.Of);
    }

    private async Task<IReadOnlyList<string>> FromMessages(StudentId id, CancellationToken stop)
    {
        var messages = await db.Messages.Where(m => m.StudentId == id).ToListAsync(stop);
        foreach (var message in messages) message.Skip(Erased);
        await db.SaveChangesAsync(stop);
        await db.Messages.Where(m => m.StudentId == id).ExecuteUpdateAsync(m => m.SetProperty(x => x.Reason, "").SetProperty(x => x.OwnWords, (string?)null), stop);
        return [.. messages.SelectMany(letters.Of)];
    }
}
