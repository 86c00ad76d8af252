using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students.Imports;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons.Imports;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Takes a list of students in. Nothing is read from it yet, but for what it is.</summary>
public sealed class OpenStudentFile(OfficeDb db, StudentFileDoor door, StudentFileStore store, INewIds ids, AuditTrail trail)
{
    /// <summary>The list, with its columns told when one with the same columns was told before and nothing is open; or why it is not taken.</summary>
    public async Task<Outcome<StudentFile>> Of(string name, Stream content, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents || actor.Account is null) return NotAllowed.To("bring lists of students");
        var file = StudentFile.Open(ids.Next(), actor, door.Now);
        if (await store.Keep(file.Id, content, stop) is not { } sha)
            return new Refusal("file-too-large", $"The list is larger than {StudentFileStore.MostBytes / 1024 / 1024} MB. Split it and bring the parts.", "file");
        file.Call(OpenFiles.NameOf(name), sha);
        var taken = await Take(file, actor, stop);
        if (!taken.Succeeded) store.Remove(file.Id);
        return taken;
    }

    private async Task<Outcome<StudentFile>> Take(StudentFile file, Actor actor, CancellationToken stop)
    {
        var looked = door.Look(file.Id);
        if (!looked.TryGet(out var facts)) return Outcome<StudentFile>.Refused(looked.Refusals);
        var kept = await db.RememberedStudentColumns.AsNoTracking().SingleOrDefaultAsync(c => c.HeaderSha256 == facts.Layout.HeaderSha256, stop);
        if (kept is not null && new StudentColumnsCheck(facts).Of(StudentColumnsForm.Of(kept.Columns)).TryGet(out var columns)) file.Say(columns);
        db.StudentFiles.Add(file);
        trail.Add(actor, "student-list-opened", AuditSubject.StudentFile(file.Id));
        await db.SaveChangesAsync(stop);
        return file;
    }
}
