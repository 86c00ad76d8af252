using CoachOffice.Data;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons.Sheets;

/// <summary>The reading sheets a coach can pick: the shipped ones, then their own by name.</summary>
public sealed class ListSheets(OfficeDb db)
{
    /// <summary>All of them; to somebody without an account only the shipped ones.</summary>
    public async Task<IReadOnlyList<SheetChoice>> For(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (actor.Account is not { } account) return ShippedSheets.All;
        var own = await db.ReadingSheets.AsNoTracking().Where(s => s.Owner == account).OrderBy(s => s.Name).ThenBy(s => s.Id).ToListAsync(stop);
        return [.. ShippedSheets.All, .. own.Select(s => new SheetChoice(s.Id.ToString("N"), s.Name, s.Measures) { Id = s.Id, Version = s.Version })];
    }
}
