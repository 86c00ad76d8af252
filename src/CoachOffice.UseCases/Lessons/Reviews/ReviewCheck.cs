using CoachOffice.Data;
using CoachOffice.Data.Media;
using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Media;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>What has to hold before clips of a student are taken in: consent first, then room and kind.</summary>
public sealed class ReviewCheck(OfficeDb db, MediaFolder folder, MediaSettings settings, MediaConsents consents)
{
    /// <summary>Reviews that may wait of one student at once.</summary>
    private const int MostWaiting = 5;

    /// <summary>What is ordered, or everything that is wrong.</summary>
    public async Task<Outcome<Offering>> Of(ReviewForm form, StudentId student, long bytes, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == student && s.ErasedAt == null && s.ArchivedAt == null, stop) is not { } sender) return ReviewRefusals.NotFound;
        var offering = await db.Offerings.AsNoTracking().SingleOrDefaultAsync(o => o.Id == form.OfferingId && o.Kind == OfferingKind.RemoteReview && o.ArchivedAt == null && o.IsBookable, stop);
        if (offering is null) return new Refusal("review-offering", "Pick which review you would like.", nameof(form.OfferingId));
        if (ConsentOf(await consents.For(sender, stop)) is { } missing) return missing;
        List<Refusal> wrong = [.. form.Words.Check()];
        if (form.Clips.Count is 0 or > RemoteReview.MostClips) wrong.Add(new("review-clips", $"Choose from 1 to {RemoteReview.MostClips} clips.", nameof(form.Clips)));
        if (await db.RemoteReviews.CountAsync(r => r.StudentId == student && (r.Status == ReviewStatus.Received || r.Status == ReviewStatus.Opened), stop) >= MostWaiting)
            wrong.Add(new("review-enough", $"{MostWaiting} reviews of yours wait already; send the next one when one of them is answered."));
        if (await Used(stop) + bytes > settings.Quota) wrong.Add(new("media-quota", "There is no room for more clips at the moment. Tell the practice, please; nothing of yours was kept."));
        return wrong.Count > 0 ? Outcome<Offering>.Refused(wrong) : offering;
    }

    /// <summary>The clips, lying aside until they are kept; what is no clip is refused and everything is let go.</summary>
    public async Task<Outcome<IReadOnlyList<ReceivedClip>>> Receive(IReadOnlyList<Func<Stream>> clips, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(clips);
        var received = new List<ReceivedClip>();
        foreach (var open in clips)
        {
            await using var bytes = open();
            var head = new byte[MediaFormats.HeadLength];
            var count = await bytes.ReadAtLeastAsync(head, head.Length, throwOnEndOfStream: false, stop);
            var format = MediaFormats.Recognise(head.AsSpan(0, count));
            bytes.Position = 0;
            var content = format?.Kind() == MediaKind.Clip ? await folder.Receive(bytes, settings.LargestClip, stop) : null;
            if (content is not null)
            {
                received.Add(new ReceivedClip(content, format!.Value));
                continue;
            }

            foreach (var clip in received) clip.Content.Dispose();
            return format?.Kind() == MediaKind.Clip
                ? new Refusal("clip-too-large", $"A clip may have up to {MediaSize.Said(settings.LargestClip)}. Cut it to the swing and send it again.", nameof(ReviewForm.Clips))
                : new Refusal("clip-format", "A clip is an MP4, MOV or WebM video; what a file is, its content says and not its name.", nameof(ReviewForm.Clips));
        }

        return Outcome<IReadOnlyList<ReceivedClip>>.Of(received);
    }

    private async Task<long> Used(CancellationToken stop) => await db.MediaItems.SumAsync(m => m.Bytes, stop) + await db.ReviewClips.SumAsync(c => c.Bytes, stop);

    private static Refusal? ConsentOf(MediaPermission permission) => permission switch
    {
        MediaPermission.Missing => new("media-consent-missing", "For players under 18 the practice needs a guardian's consent to clips before any are sent. Ask the practice to record it, then come back here."),
        MediaPermission.Withdrawn => new("media-consent-withdrawn", "Consent to clips was withdrawn, so none are taken. Tell the practice if that has changed."),
        _ => null,
    };
}
