using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Safekeeping;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Safekeeping;

/// <summary>How the practice's backups stand.</summary>
public sealed class ReadBackups(OfficeDb db, BackupPlace place, PracticeClock clock, ReadPractice practice)
{
    private const int Shown = 20;

    /// <summary>For the page of an owner.</summary>
    public async Task<Outcome<BackupsView>> For(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("see backups");
        using var shelf = place.Shelf();
        var latest = await Latest().Take(Shown).ToListAsync(stop);
        var good = await Good(stop);
        return new BackupsView(place.Settings, place.Folder, place.IsBeside, [.. shelf.Backups().Select(b => Path.GetFileName(b)!)], latest, good);
    }

    /// <summary>What an owner must do something about, in a sentence; null when all is well, or nobody here answers for backups.</summary>
    public async Task<string?> Notice(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn || !place.Settings.Enabled || await practice.Now(stop) is not { IsDemo: false } office) return null;
        var good = await Good(stop);
        var age = clock.Now - (good?.At ?? office.OpenedAt);
        if (age > Duration.FromDays(place.Settings.WarnAfterDays))
            return good is null ? "There is no backup of this practice yet." : $"The last backup that was tried out and found good is {(int)age.TotalDays} days old.";
        var last = await Latest().FirstOrDefaultAsync(stop);
        return last is { State: SafetyCopyState.Failed } ? last.Problem : null;
    }

    /// <summary>How old the last good one is; null when there is none.</summary>
    public async Task<Duration?> Age(CancellationToken stop = default) => await Good(stop) is { } good ? clock.Now - good.At : null;

    private Task<SafetyCopy?> Good(CancellationToken stop) => Latest().FirstOrDefaultAsync(c => c.State == SafetyCopyState.Proved, stop);

    private IQueryable<SafetyCopy> Latest() => db.SafetyCopies.AsNoTracking().OrderByDescending(c => c.At).ThenByDescending(c => c.Id);
}
