using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>What has to hold before a clip may come in, asked before its first byte and again after its last.</summary>
public sealed class ClipCheck(OfficeDb db, MediaSettings settings, MediaConsents consents)
{
    /// <summary>The lesson it goes to, or why it may not.</summary>
    public async Task<Outcome<Lesson>> Of(LessonId lesson, long length, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is null) return NotAllowed.To("add clips");
        if (await db.Lessons.AsNoTracking().SingleOrDefaultAsync(l => l.Id == lesson, stop) is not { } found) return new Refusal("lesson-not-found", "There is no such lesson.");
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == found.StudentId, stop);
        if (student.ErasedAt is not null) return new Refusal("student-erased", "This student was erased; nothing is added any more.");
        if (MediaRefusals.Of(await consents.For(student, stop), student) is { } against) return against;
        if (length is < 1 || length > settings.LargestClip) return new Refusal("clip-too-large", $"A clip may have up to {MediaSize.Said(settings.LargestClip)}.", "File");
        var used = await db.MediaItems.SumAsync(m => m.Bytes, stop) + await db.ReviewClips.SumAsync(c => c.Bytes, stop);
        return used + length <= settings.Quota ? found
            : new Refusal("media-quota", $"The practice keeps {MediaSize.Said(used)} of stills and clips, of at most {MediaSize.Said(settings.Quota)}; this one has {MediaSize.Said(length)}. Remove some, or have the quota raised.");
    }
}
