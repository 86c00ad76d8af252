using CoachOffice.Data;
using CoachOffice.Data.Media;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Hands out the bytes of a still or clip to whoever may teach, while consent stands.</summary>
public sealed class OpenMedia(OfficeDb db, MediaFolder folder, MediaConsents consents)
{
    /// <summary>The bytes, or those of its small picture; or why not.</summary>
    public async Task<Outcome<OpenedMedia>> Of(MediaId media, bool small, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("see stills and clips");
        if (await db.MediaItems.AsNoTracking().SingleOrDefaultAsync(m => m.Id == media, stop) is not { } item) return MediaRefusals.NotFound;
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == item.StudentId, stop);
        if (MediaRefusals.Of(await consents.For(student, stop), student) is { } against) return against;
        var (hash, format) = small ? (item.SmallSha256, MediaFormat.Jpeg) : (item.Sha256, item.Format);
        if (hash.Length == 0 || folder.Open(hash) is not { } bytes) return MediaRefusals.NotFound;
        return new OpenedMedia(bytes, format, $"{Terms.Of(item.Kind)}-{item.Id.Value.ToString("N")[^8..]}.{format.Ending()}", hash);
    }
}
