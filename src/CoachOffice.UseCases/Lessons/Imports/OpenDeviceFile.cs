using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Takes a file of a launch monitor in. Nothing is read from it yet, but for what it is.</summary>
public sealed class OpenDeviceFile(OfficeDb db, DeviceFileDoor door, DeviceFileStore store, INewIds ids, AuditTrail trail)
{
    /// <summary>The file, with answers when one with the same columns was told before and nothing is open; or why it is not taken.</summary>
    public async Task<Outcome<DeviceFile>> For(StudentId student, string name, Stream content, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is null) return NotAllowed.To("import files");
        var whose = await door.Whose(student, stop);
        if (!whose.Succeeded) return Outcome<DeviceFile>.Refused(whose.Refusals);
        var file = DeviceFile.Open(ids.Next(), student, actor, door.Now);
        if (await store.Keep(file.Id, content, stop) is not { } sha)
            return new Refusal("file-too-large", $"The file is larger than {DeviceFileStore.MostBytes / 1024 / 1024} MB. Split it and bring the parts.", "file");
        file.Call(OpenFiles.NameOf(name), sha);
        var taken = await Take(file, actor, stop);
        if (!taken.Succeeded) store.Remove(file.Id);
        return taken;
    }

    private async Task<Outcome<DeviceFile>> Take(DeviceFile file, Actor actor, CancellationToken stop)
    {
        if (await db.DeviceFiles.AsNoTracking().SingleOrDefaultAsync(f => f.StudentId == file.StudentId && f.ImportedSha256 == file.Sha256, stop) is { } known) return await door.Known(known, stop);
        var looked = FileFacts.Of(store.PathOf(file.Id), SheetKind.Swings);
        if (!looked.TryGet(out var facts)) return Outcome<DeviceFile>.Refused(looked.Refusals);
        file.Say(await Remembered(facts, stop));
        db.DeviceFiles.Add(file);
        trail.Add(actor, "device-file-opened", AuditSubject.Of(file.StudentId));
        await db.SaveChangesAsync(stop);
        return file;
    }

    private async Task<FileAnswers?> Remembered(FileFacts facts, CancellationToken stop)
    {
        var kept = await db.RememberedColumns.AsNoTracking().SingleOrDefaultAsync(c => c.HeaderSha256 == facts.Layout.HeaderSha256, stop);
        if (kept is null) return null;
        var check = new ColumnsCheck(facts, await door.Book(stop), await door.Today(stop));
        return check.Of(ColumnsForm.Of(kept.Mapping), saidBefore: true).TryGet(out var answers) ? answers : null;
    }
}
