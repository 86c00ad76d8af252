using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Removes every still and clip of a student for good, as when consent was withdrawn.</summary>
public sealed class RemoveMediaOf(OfficeDb db, MediaFiles files, AuditTrail trail)
{
    /// <summary>How many went, or why none. Readings taken from them stay.</summary>
    public async Task<Outcome<int>> ForGood(StudentId student, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("remove stills and clips");
        var items = await db.MediaItems.Where(m => m.StudentId == student).ToListAsync(stop);
        if (items.Count == 0) return 0;
        db.MediaItems.RemoveRange(items);
        trail.Add(actor, "media-of-student-removed", AuditSubject.Of(student), $"count:{items.Count}");
        if (await db.TrySave(stop) != Saved.Yes) return MediaRefusals.Busy;
        await files.DropUnneeded(items.SelectMany(m => new[] { m.Sha256, m.SmallSha256 }), CancellationToken.None);
        return items.Count;
    }
}
