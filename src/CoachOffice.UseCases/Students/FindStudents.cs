using System.Linq.Expressions;
using CoachOffice.Data;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Students;

/// <summary>Search as you type: every word typed must occur in name, mail or phone, whatever its case and marks.</summary>
public sealed class FindStudents(OfficeDb db, PracticeClock clock)
{
    private const string Escape = "\\";
    private const int MostWords = 6;

    /// <summary>A page of students, all of them for an empty text; one query.</summary>
    public async Task<StudentList> Matching(string text, int page, bool archived, StudentsWithin? within = null, CancellationToken stop = default)
    {
        var number = Math.Clamp(page, 1, StudentList.LastPage);
        var found = Words(text).Aggregate(
            Within(db.Students.AsNoTracking().Where(s => archived ? s.ArchivedAt != null && s.ErasedAt == null : s.ArchivedAt == null), within),
            (students, word) => students.Where(Holds(word)));
        var rows = await found.OrderBy(s => s.SearchText).ThenBy(s => s.Id)
            .Skip((number - 1) * StudentList.PageSize).Take(StudentList.PageSize)
            .Select(s => new { s.Id, s.GivenName, s.FamilyName, s.Email, s.Phone, s.BirthDate, s.Guardian, Total = found.Count() })
            .ToListAsync(stop);
        var today = await clock.Today(stop);
        return new StudentList(
            [.. rows.Select(s => Row(s.Id, $"{s.GivenName} {s.FamilyName}".Trim(), Contact(s.Email, s.Phone), s.BirthDate, s.Guardian, today))],
            rows.Count > 0 ? rows[0].Total : 0,
            number);
    }

    private IQueryable<Student> Within(IQueryable<Student> students, StudentsWithin? within)
    {
        if (within?.Group is { } group) students = students.Where(s => db.GroupMembers.Any(m => m.GroupId == group && m.StudentId == s.Id));
        if (within?.Payer is { } payer) students = students.Where(s => s.PayerId == payer);
        if (within?.List is { } list) students = students.Where(s => db.BroughtStudents.Any(b => b.FileId == list && b.StudentId == s.Id));
        return students;
    }

    private static IEnumerable<string> Words(string? text) =>
        StudentSearch.Fold(text ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries).Take(MostWords);

    private static Expression<Func<Student, bool>> Holds(string word)
    {
        var pattern = $"%{word.Replace(Escape, Escape + Escape).Replace("%", Escape + "%").Replace("_", Escape + "_")}%";
        return s => EF.Functions.Like(s.SearchText, pattern, Escape);
    }

    private static StudentRow Row(StudentId id, string name, string contact, LocalDate? born, Guardian? guardian, LocalDate today)
    {
        var minor = born is { } day && Ages.IsMinor(day, today);
        return new StudentRow(id, name, minor && guardian is not null ? Contact(guardian.Email, guardian.Phone) : contact, minor);
    }

    private static string Contact(string mail, string phone) => mail.Length > 0 ? mail : phone;
}
