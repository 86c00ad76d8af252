using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons.Sheets;

/// <summary>Keeps a coach's own reading sheet.</summary>
public sealed class KeepSheet(OfficeDb db, AuditTrail trail, PlanBooks books, PlanDoor door)
{
    private const int MostSheets = 40;

    /// <summary>The sheet's id, or what is wrong with it.</summary>
    public async Task<Outcome<Guid>> As(SheetForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } owner) return NotAllowed.To("keep reading sheets");
        if (Against(form, await books.InForce(stop)) is { } against) return against;
        var mine = await db.ReadingSheets.Where(s => s.Owner == owner).ToListAsync(stop);
        var sheet = form.Id is null ? New(owner) : mine.Find(s => s.Id == form.Id);
        if (sheet is null) return SheetRefusals.NotFound;
        if (form.Id is not null && sheet.Version != form.Version) return SheetRefusals.Changed;
        if (form.Id is null && mine.Count >= MostSheets) return new Refusal("too-many-sheets", $"There are {MostSheets} sheets already; take one out first.");
        if (mine.Exists(s => s.Id != sheet.Id && string.Equals(s.Name, form.Name.Trim(), StringComparison.OrdinalIgnoreCase)))
            return new Refusal("sheet-name-taken", $"You have a sheet called '{form.Name.Trim()}'; give this one another name.", nameof(form.Name));
        sheet.Write(form.Name, [.. form.Measures.Select(MeasureId.From)]);
        trail.Add(actor, "sheet-kept", AuditSubject.Sheet(sheet.Id));
        return await db.TrySave(stop) == Saved.Yes ? sheet.Id : SheetRefusals.Changed;
    }

    private static Refusal? Against(SheetForm form, Book book)
    {
        if (string.IsNullOrWhiteSpace(form.Name) || form.Name.Trim().Length > ReadingSheet.LongestName)
            return new("sheet-name", $"Give the sheet a name of at most {ReadingSheet.LongestName} characters.", nameof(form.Name));
        if (form.Measures.Count == 0) return new("sheet-empty", "Tick at least one measure.", nameof(form.Measures));
        return form.Measures.FirstOrDefault(m => string.IsNullOrWhiteSpace(m) || book.Find(MeasureId.From(m)) is null) is { } unknown
            ? new("measure-not-known", $"The rulebook has no measure '{unknown}'.", nameof(form.Measures))
            : null;
    }

    private ReadingSheet New(AccountId owner)
    {
        var sheet = ReadingSheet.Of(door.NewId(), owner, door.Now);
        db.ReadingSheets.Add(sheet);
        return sheet;
    }
}
