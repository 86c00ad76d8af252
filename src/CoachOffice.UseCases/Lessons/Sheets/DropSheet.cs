using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons.Sheets;

/// <summary>Takes out one of a coach's own reading sheets. Lessons read by it show every measure again; no reading is touched.</summary>
public sealed class DropSheet(OfficeDb db, AuditTrail trail)
{
    /// <summary>The sheet's name, or why not.</summary>
    public async Task<Outcome<string>> Of(Guid id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } owner) return NotAllowed.To("take out reading sheets");
        var sheet = await db.ReadingSheets.SingleOrDefaultAsync(s => s.Id == id && s.Owner == owner, stop);
        if (sheet is null) return SheetRefusals.NotFound;
        db.ReadingSheets.Remove(sheet);
        trail.Add(actor, "sheet-dropped", AuditSubject.Sheet(sheet.Id));
        return await db.TrySave(stop) == Saved.Yes ? sheet.Name : SheetRefusals.Changed;
    }
}
