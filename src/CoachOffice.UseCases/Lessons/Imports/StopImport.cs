using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Ends an import early: nothing of it stays, and the file can be imported again.</summary>
public sealed class StopImport(DeviceFileDoor door, ImportRuns runs)
{
    /// <summary>True, or why not.</summary>
    public async Task<Outcome<bool>> Of(StudentId student, Guid file, Actor actor, CancellationToken stop = default)
    {
        var found = await door.Find(student, file, actor, stop);
        if (!found.Succeeded) return Outcome<bool>.Refused(found.Refusals);
        if (runs.Of(file) is not { } run || run.Account != actor.Account) return new Refusal("import-not-found", "No import of this file is under way.");
        run.Stop();
        return true;
    }
}
