using CoachOffice.Data;
using CoachOffice.Data.Media;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Adds a still to a lesson: file, row and audit, or none of them.</summary>
public sealed class AddStill(OfficeDb db, MediaFolder folder, MediaSettings settings, MediaConsents consents, StillTakes takes)
{
    /// <summary>The still, or why not. The same picture added to the same lesson again is the one that is there.</summary>
    /// <param name="lesson">Of which lesson.</param>
    /// <param name="shows">What it shows.</param>
    /// <param name="bytes">The picture as it came.</param>
    /// <param name="actor">Who does it.</param>
    /// <param name="stop">Ends the wait.</param>
    public async Task<Outcome<MediaId>> To(LessonId lesson, StillShows shows, Stream bytes, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(shows);
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } by) return NotAllowed.To("add stills");
        if (await db.Lessons.AsNoTracking().SingleOrDefaultAsync(l => l.Id == lesson, stop) is not { } found) return new Refusal("lesson-not-found", "There is no such lesson.");
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == found.StudentId, stop);
        if (student.ErasedAt is not null) return new Refusal("student-erased", "This student was erased; nothing is added any more.");
        if (MediaRefusals.Of(await consents.For(student, stop), student) is { } against) return against;
        if (StillCheck.Of(shows) is { } unreadable) return unreadable;
        if (await Whole(bytes, stop) is not { } file) return new Refusal("still-too-large", $"A still may have up to {MediaSize.Said(settings.LargestStill)}.", "File");
        var read = await StillReading.Of(file, stop);
        if (!read.TryGet(out var still)) return Outcome<MediaId>.Refused(read.Refusals);
        return await Save(new NewStill(found, shows, StillMarks.UsualSide(student.Hand), still, by), actor, stop);
    }

    private async Task<Outcome<MediaId>> Save(NewStill add, Actor actor, CancellationToken stop)
    {
        var (lesson, _, _, still, by) = add;
        using var picture = (await folder.Receive(new MemoryStream(still.Picture), long.MaxValue, stop))!;
        using var small = (await folder.Receive(new MemoryStream(still.Small), long.MaxValue, stop))!;
        using var alone = await folder.Alone(stop);
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        if (await db.MediaItems.FirstOrDefaultAsync(m => m.LessonId == lesson.Id && m.Sha256 == picture.Sha256, stop) is { } same) return same.Id;
        var used = await db.MediaItems.SumAsync(m => m.Bytes, stop);
        if (used + picture.Bytes + small.Bytes > settings.Quota)
            return new Refusal("media-quota", $"The practice keeps {MediaSize.Said(used)} of stills and clips, of at most {MediaSize.Said(settings.Quota)}; this one has {MediaSize.Said(picture.Bytes)}. Remove some, or have the quota raised.");
        var content = new StillContent(folder.Keep(picture, still.Format), folder.Keep(small, MediaFormat.Jpeg), still.Width, still.Height);
        var item = await takes.Add(add, content, actor, stop);
        if (await db.TrySave(stop) != Saved.Yes) return MediaRefusals.Busy;
        await transaction.CommitAsync(stop);
        return item.Id;
    }

    private async Task<ReadOnlyMemory<byte>?> Whole(Stream bytes, CancellationToken stop)
    {
        using var held = new MemoryStream();
        var buffer = new byte[64 * 1024];
        for (int read; (read = await bytes.ReadAsync(buffer, stop)) > 0;)
        {
            if (held.Length + read > settings.LargestStill) return null;
            held.Write(buffer, 0, read);
        }

        return held.GetBuffer().AsMemory(0, (int)held.Length);
    }
}
