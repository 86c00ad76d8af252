using System.Globalization;
using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Finds files for those who may see them, and opens them to be read.</summary>
public sealed class DeviceFileDoor(OfficeDb db, PlanBooks books, PracticeClock clock, DeviceFileStore store)
{
    /// <summary>Now, to the millisecond.</summary>
    internal Instant Now => clock.Now;

    /// <summary>An open file is its bringer's alone; an imported one everybody's who teaches.</summary>
    public async Task<Outcome<DeviceFile>> Find(StudentId student, Guid id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } account) return NotAllowed.To("import files");
        var file = await db.DeviceFiles.SingleOrDefaultAsync(f => f.Id == id && f.StudentId == student && (f.ImportedAt != null || f.Account == account), stop);
        return file is null ? NotFound : file;
    }

    /// <summary>The same, only while it is open and its text is there.</summary>
    public async Task<Outcome<DeviceFile>> FindOpen(StudentId student, Guid id, Actor actor, CancellationToken stop = default)
    {
        var found = await Find(student, id, actor, stop);
        return found.TryGet(out var file) && (!file.IsOpen || !File.Exists(store.PathOf(id))) ? NotFound : found;
    }

    internal static Refusal NotFound { get; } = new("file-not-found", "There is no such file. It may have been swept away after a day: bring it again.");

    /// <summary>Today in the practice's zone.</summary>
    internal Task<LocalDate> Today(CancellationToken stop) => clock.Today(stop);

    /// <summary>The rulebook in force, whose measures files are read into.</summary>
    internal Task<Book> Book(CancellationToken stop) => books.InForce(stop);

    /// <summary>That a file is in the lessons already.</summary>
    internal async Task<Refusal> Known(DeviceFile file, CancellationToken stop)
    {
        var day = file.ImportedAt!.Value.InZone(await clock.Zone(stop)).Date;
        return new Refusal("file-known", string.Create(CultureInfo.InvariantCulture, $"{file.ByName} imported this very file on {day:d MMMM uuuu}. Its swings are in this student's lessons already, and nothing was added."), "file");
    }

    /// <summary>The student whose file it is, when lessons can be kept for them.</summary>
    internal async Task<Outcome<Student>> Whose(StudentId id, CancellationToken stop)
    {
        var student = await db.Students.SingleOrDefaultAsync(s => s.Id == id && s.ErasedAt == null, stop);
        if (student is null) return new Refusal("student-not-found", "There is no such student.");
        return student.ArchivedAt is null ? student : new Refusal("student-archived", $"{student.FullName} is archived; restore the record first.");
    }

    /// <summary>The file by its answers, ready to be read by the book in force.</summary>
    internal async Task<FileReading> Read(DeviceFile file, Student student, CancellationToken stop)
    {
        var layout = LayoutReader.Of(store.PathOf(file.Id), SheetKind.Swings).Value;
        var reader = new RowReader(layout, file.Answers!, await books.InForce(stop), student.Hand, await clock.Today(stop));
        return new FileReading(store.PathOf(file.Id), layout, reader);
    }

    /// <summary>Its text is not needed any more.</summary>
    internal void Forget(DeviceFile file) => store.Remove(file.Id);
}
