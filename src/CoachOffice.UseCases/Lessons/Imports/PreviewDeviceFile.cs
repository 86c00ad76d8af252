using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Reads an open file without keeping anything: what would be kept where, and what would be refused and why.</summary>
public sealed class PreviewDeviceFile(OfficeDb db, DeviceFileDoor door)
{
    /// <summary>More lessons than these are not shown one by one.</summary>
    public const int MostGroups = 30;

    private const int MostSwings = 8;

    /// <summary>The file as it would be imported; refused while its columns were not told.</summary>
    public async Task<Outcome<DeviceFileView>> Of(StudentId student, Guid id, Actor actor, CancellationToken stop = default)
    {
        var found = await door.FindOpen(student, id, actor, stop);
        if (!found.TryGet(out var file)) return Outcome<DeviceFileView>.Refused(found.Refusals);
        var whose = await door.Whose(student, stop);
        if (!whose.TryGet(out var person)) return Outcome<DeviceFileView>.Refused(whose.Refusals);
        if (file.Answers is null) return new Refusal("columns-unsaid", "Say first what the columns hold.");
        var reading = await door.Read(file, person, stop);
        var (tally, first) = Read(reading, stop);
        return new DeviceFileView
        {
            File = file,
            StudentName = person.FullName,
            Measures = [.. reading.Columns.Select(c => c.Measure)],
            Groups = await Groups(tally, person, await door.Book(stop), stop),
            AllGroups = tally.Groups.Count,
            FirstSwings = first,
            Would = tally.Outcome([]),
            Reasons = tally.Reasons,
        };
    }

    private static (FileTally Tally, List<DeviceSwing> First) Read(FileReading reading, CancellationToken stop)
    {
        var tally = new FileTally(reading.Columns);
        var first = new List<DeviceSwing>();
        foreach (var (line, row) in reading.Rows())
        {
            stop.ThrowIfCancellationRequested();
            if (tally.Take(row, line) is not null && first.Count < MostSwings) first.Add(new DeviceSwing(line, row.Values));
        }

        return (tally, first);
    }

    private async Task<IReadOnlyList<DeviceGroup>> Groups(FileTally tally, Student student, Book book, CancellationToken stop)
    {
        var shown = tally.Groups.Take(MostGroups).ToList();
        var days = shown.Select(g => g.Day).Distinct().ToList();
        var there = await db.Lessons.AsNoTracking().Where(l => l.StudentId == student.Id && days.Contains(l.HeldOn))
            .OrderByDescending(l => l.CreatedAt).ThenByDescending(l => l.Id).Select(l => new { l.Id, l.HeldOn, l.Club }).ToListAsync(stop);
        return [.. shown.Select(g => new DeviceGroup(g.Day, g.Club, g.Swings, Graded(g, student, book), [.. there.Where(l => l.HeldOn == g.Day && l.Club == g.Club).Select(l => l.Id)]))];
    }

    private static IReadOnlyList<Finding> Graded(GroupTally group, Student student, Book book) =>
        LessonGrading.Grade(book, new LessonFacts { AsOf = group.Day, Student = FactsOfStudent.On(student, group.Day), Club = group.Club, Readings = group.Values() });
}
