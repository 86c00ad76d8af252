using System.Globalization;
using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students.Imports;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons.Imports;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Finds lists of students for those who may see them, and opens them to be read.</summary>
public sealed class StudentFileDoor(OfficeDb db, PracticeClock clock, StudentFileStore store)
{
    /// <summary>Now, to the millisecond.</summary>
    internal Instant Now => clock.Now;

    internal static Refusal NotFound { get; } = new("file-not-found", "There is no such list. It may have been swept away after a day: bring it again.");

    /// <summary>An open list is its bringer's alone; one that was brought in everybody's who keeps students.</summary>
    public async Task<Outcome<StudentFile>> Find(Guid id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents || actor.Account is not { } account) return NotAllowed.To("bring lists of students");
        var file = await db.StudentFiles.SingleOrDefaultAsync(f => f.Id == id && (f.BroughtAt != null || f.Account == account), stop);
        return file is null ? NotFound : file;
    }

    /// <summary>The same, only while it is open and its text is there.</summary>
    internal async Task<Outcome<StudentFile>> FindOpen(Guid id, Actor actor, CancellationToken stop)
    {
        var found = await Find(id, actor, stop);
        return found.TryGet(out var file) && (!file.IsOpen || !store.Has(id)) ? NotFound : found;
    }

    /// <summary>The list looked through once.</summary>
    internal Outcome<FileFacts> Look(Guid id) => FileFacts.Of(store.PathOf(id), SheetKind.Students);

    /// <summary>Its rows, read by what was said of its columns and held against everybody who is there now.</summary>
    internal async Task<IReadOnlyList<JudgedRow>> Judge(StudentFile file, CancellationToken stop)
    {
        var known = new KnownPeople();
        var students = await db.Students.AsNoTracking().Where(s => s.ErasedAt == null).OrderBy(s => s.AddedAt).ThenBy(s => s.Id).ToListAsync(stop);
        foreach (var student in students) known.Add(new KnownPerson(student.Id, 0, student.Details()));
        var (path, today) = (store.PathOf(file.Id), await clock.Today(stop));
        var judge = new StudentJudge(known, file.Columns!, today);
        return [.. new StudentSheetReader(path, LayoutReader.Of(path, SheetKind.Students).Value, file.Columns!, today).Rows().Select(judge.Judge)];
    }

    /// <summary>That the same list was brought in before.</summary>
    internal async Task<Refusal> Known(StudentFile file, CancellationToken stop)
    {
        var day = file.BroughtAt!.Value.InZone(await clock.Zone(stop)).Date;
        return new Refusal("file-known", string.Create(CultureInfo.InvariantCulture, $"{file.ByName} brought this very list in on {day:d MMMM uuuu}, read the same way. Its students are there, and nothing was added."));
    }
}
