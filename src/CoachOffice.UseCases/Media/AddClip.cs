using CoachOffice.Data;
using CoachOffice.Data.Media;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Media;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Adds a whole clip to a lesson: file, row and audit, or none of them.</summary>
public sealed class AddClip(OfficeDb db, MediaFolder folder, MediaSettings settings, ClipCheck check, MediaDoor door)
{
    /// <summary>The clip, or why not. The same clip added to the same lesson again is the one that is there.</summary>
    public async Task<Outcome<MediaId>> To(LessonId lesson, Stream bytes, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(actor);
        var head = new byte[MediaFormats.HeadLength];
        var count = await bytes.ReadAtLeastAsync(head, head.Length, throwOnEndOfStream: false, stop);
        if (MediaFormats.Recognise(head.AsSpan(0, count)) is not { } format || format.Kind() != MediaKind.Clip)
            return new Refusal("clip-format", "A clip is an MP4, MOV or WebM video; what a file is, its content says and not its name.", "File");
        bytes.Position = 0;
        using var clip = await folder.Receive(bytes, settings.LargestClip, stop);
        using var alone = await folder.Alone(stop);
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var checkedLesson = await check.Of(lesson, clip?.Bytes ?? long.MaxValue, actor, stop);
        if (!checkedLesson.TryGet(out var found)) return Outcome<MediaId>.Refused(checkedLesson.Refusals);
        if (await db.MediaItems.FirstOrDefaultAsync(m => m.LessonId == lesson && m.Sha256 == clip!.Sha256, stop) is { } same) return same.Id;
        var item = MediaItem.Clip(MediaId.From(door.NewId()), found, folder.Keep(clip!, format), actor.Account!.Value, door.Now);
        db.MediaItems.Add(item);
        door.Note(actor, "clip-added", item.Id, $"lesson:{lesson.Value}");
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
        return item.Id;
    }
}
