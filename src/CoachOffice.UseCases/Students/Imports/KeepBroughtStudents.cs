using CoachOffice.Data;
using CoachOffice.Data.Bulk;
using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Imports;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Writes what a list brings, in the caller's transaction.</summary>
public sealed class KeepBroughtStudents(OfficeDb db, PracticeClock clock, INewIds ids, IManyRows many)
{
    private const int Batch = 500;

    internal async Task<Saved> Of(Guid file, IReadOnlyList<JudgedRow> rows, CancellationToken stop)
    {
        var filled = await Fill(rows, stop);

        // The list's own row goes first: what points to it must find it, and the same list brought in meanwhile is met here.
        if (await db.TrySave(stop) is not Saved.Yes and var not) return not;
        var added = rows.Where(r => r.Fate == RowFate.New).Select(Begin).ToList();
        await many.Add(added, stop);
        await many.Add(
            [
                .. added.Select(s => new BroughtStudent { FileId = file, StudentId = s.Id, IsNew = true, Filled = [], StudentVersion = 1 }),
                .. filled.Select(f => new BroughtStudent { FileId = file, StudentId = f.Student.Id, IsNew = false, Filled = f.Fields, StudentVersion = f.Student.Version }),
            ],
            stop);
        return Saved.Yes;
    }

    private Student Begin(JudgedRow row)
    {
        var student = Student.Register(StudentId.From(ids.Next()), row.Row.Details!, clock.Now);
        if (row.Row.IsArchived) student.Archive(clock.Now);
        if (row.Row.NoReminders) student.Stop(MessagePurpose.Encouragement, clock.Now);
        return student;
    }

    // Two rows may fill the same student: the later holds what the earlier filled too.
    private async Task<List<(Student Student, IReadOnlyList<StudentField> Fields)>> Fill(IReadOnlyList<JudgedRow> rows, CancellationToken stop)
    {
        var done = new List<(Student, IReadOnlyList<StudentField>)>();
        foreach (var some in rows.Where(r => r.Fate == RowFate.Fills).GroupBy(r => r.There!.Value).Chunk(Batch))
        {
            var wanted = some.Select(g => g.Key).ToList();
            var students = await db.Students.Where(s => wanted.Contains(s.Id)).ToDictionaryAsync(s => s.Id, stop);
            foreach (var group in some)
            {
                students[group.Key].Change(group.Last().Filled!);
                done.Add((students[group.Key], [.. group.SelectMany(r => r.Fields).Distinct()]));
            }
        }

        return done;
    }
}
