using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Removes a still or clip for good, its file too unless another row names the same bytes.</summary>
public sealed class RemoveMedia(OfficeDb db, MediaFiles files, MediaDoor door)
{
    /// <summary>The lesson it belonged to, or why not. Readings taken from it stay.</summary>
    public async Task<Outcome<LessonId>> ForGood(MediaId media, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("remove stills and clips");
        if (await db.MediaItems.SingleOrDefaultAsync(m => m.Id == media, stop) is not { } item) return MediaRefusals.NotFound;
        db.MediaItems.Remove(item);
        door.Note(actor, "media-removed", media, $"lesson:{item.LessonId.Value}");

        if (await db.TrySave(stop) != Saved.Yes) return MediaRefusals.Busy;
        await files.DropUnneeded([item.Sha256, item.SmallSha256], CancellationToken.None);
        return item.LessonId;
    }
}
