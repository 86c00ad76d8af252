using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Tells how far an import is, to whoever may see its file.</summary>
public sealed class WatchImport(DeviceFileDoor door, ImportRuns runs)
{
    /// <summary>The progress, or a refusal when none was begun here since the program started.</summary>
    public async Task<Outcome<ImportProgress>> Of(StudentId student, Guid file, Actor actor, CancellationToken stop = default)
    {
        // Asked before the file: an import that ends meanwhile is then read as kept, never as neither.
        var run = runs.Of(file)?.Progress;
        var found = await door.Find(student, file, actor, stop);
        if (!found.Succeeded) return Outcome<ImportProgress>.Refused(found.Refusals);
        return run is null ? new Refusal("import-not-found", "No import of this file is under way.") : run;
    }
}
