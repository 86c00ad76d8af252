using CoachOffice.Data;
using CoachOffice.Data.Safekeeping;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Safekeeping;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Safekeeping;

/// <summary>Makes a backup, brings it back aside, compares it with what it was made of, and keeps what came of it. Never two at once, however many nodes there are.</summary>
public sealed class MakeBackup(WriteBackup write, BackupPlace place, BackupRecords records, PracticeClock clock, ReadPractice practice)
{
    /// <summary>At once, for an owner. A failure is a value too: it is kept like a success.</summary>
    public async Task<Outcome<SafetyCopy>> Now(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("make backups");
        await using var turn = await write.Turn(stop);
        if (turn is null) return new Refusal("backup-under-way", "A backup is being made at this moment. It stands here when it is done.");
        return await Make(actor, stop);
    }

    /// <summary>For the clock: when one is due and nobody else makes it. Null when there was nothing to do.</summary>
    public async Task<SafetyCopy?> Due(CancellationToken stop)
    {
        if (!place.Settings.Enabled || await practice.Now(stop) is not { IsDemo: false } || !await IsDue(stop)) return null;
        await using var turn = await write.Turn(stop);

        // Another node may have made it while this one asked for its turn.
        return turn is null || !await IsDue(stop) ? null : await Make(Actor.Clock, stop);
    }

    private async Task<bool> IsDue(CancellationToken stop) =>
        !await records.HasProvedSince(BackupHours.Latest(place.Settings.Hour, clock.Now, await clock.Zone(stop)), stop);

    private async Task<SafetyCopy> Make(Actor actor, CancellationToken stop)
    {
        var begun = clock.Now;
        using var shelf = place.Shelf();
        try
        {
            var backup = await write.On(shelf, place.Settings.Keep, stop);
            var proved = await place.Restore(backup).Prove(stop);
            if (!proved.TryGet(out var manifest)) return await records.KeepFailure(begun, actor, proved.Refusals[0].Sentence, stop);
            var content = new SafetyCopyContent(Path.GetFileName(backup), manifest.Rows, manifest.Media.Count, manifest.Absent.Count, manifest.Bytes);
            return await records.KeepProof((begun, clock.Now), actor, content, stop);
        }
        catch (Exception failure) when (BackupTrouble.InWords(failure, shelf.Path) is not null)
        {
            return await records.KeepFailure(begun, actor, BackupTrouble.InWords(failure, shelf.Path)!, stop);
        }
    }
}
