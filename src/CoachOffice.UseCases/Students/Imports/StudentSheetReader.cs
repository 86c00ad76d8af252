using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Imports;
using CoachOffice.UseCases.Lessons.Imports;
using NodaTime;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>From a list's rows to students as they would be entered, or to one sentence why not.</summary>
internal sealed class StudentSheetReader(string path, FileLayout layout, StudentColumns columns, LocalDate today)
{
    /// <summary>Every row below the names.</summary>
    public IEnumerable<ReadStudentRow> Rows()
    {
        using var text = FileText.Open(path) ?? throw new FileNotFoundException("The list is no longer there.");
        using var cells = new CsvCells(text, layout.Delimiter, SheetKind.Students);
        for (var i = 0; i < layout.HeadRows; i++) cells.Next();
        while (cells.Next()) yield return Row(cells, cells.Line);
    }

    private ReadStudentRow Row(CsvCells cells, int line)
    {
        string[] row = [.. Enumerable.Range(0, cells.Count).Select(i => cells[i])];
        if (cells.IsBad) return No(line, row, "quotes", "A quote stands where none may, or is never closed: whatever follows it may be lost in this row.");
        if (row.Length != layout.Columns.Count && !EndsEmpty(row))
            return No(line, row, "ragged", $"The row has {row.Length} cells under {layout.Columns.Count} names.");
        var read = new StudentCells(row, columns, today);
        var details = Details(read);
        var entered = new ReadStudentRow { Line = line, Cells = row, Name = $"{details.GivenName} {details.FamilyName}".Trim(), Details = details, IsArchived = read.Says(StudentField.Archived), NoReminders = read.Says(StudentField.NoReminders) };
        if (read.Wrong is { } wrong) return entered with { Details = null, Refused = new NotedRow(line, wrong.Code, wrong.Sentence) };
        return StudentCheck.Of(details, today) is [var first, ..] ? entered with { Details = null, Refused = new NotedRow(line, first.Code, first.Sentence) } : entered;
    }

    private static StudentDetails Details(StudentCells read)
    {
        var (given, family) = read.Name();
        return new StudentDetails
        {
            GivenName = given,
            FamilyName = family,
            Email = read.Text(StudentField.Email),
            Phone = read.Text(StudentField.Phone),
            BirthDate = read.BirthDate(),
            Guardian = read.GuardianOf(),
            Hand = read.HandOf(),
            Level = read.Word(StudentField.Level, Level.Improver),
            Goals = read.Words<Goal>(StudentField.Goals),
            Kit = read.Words<Kit>(StudentField.Kit),
            Room = read.Word(StudentField.Room, Room.Range),
            MinutesPerWeek = read.Whole(StudentField.MinutesPerWeek, 90),
            DaysPerWeek = read.Whole(StudentField.DaysPerWeek, 3),
            Height = read.Amount((StudentField.HeightCm, Unit.Centimetre), (StudentField.HeightInches, Unit.Inch)),
            ClubSpeedGoal = read.Amount((StudentField.SpeedGoalMetresPerSecond, Unit.MetrePerSecond), (StudentField.SpeedGoalMilesPerHour, Unit.MilePerHour)),
            Limits = read.Limits(),
            Notes = read.Text(StudentField.Notes),
        };
    }

    private static ReadStudentRow No(int line, string[] row, string code, string sentence) =>
        new() { Line = line, Cells = row, Name = row.FirstOrDefault(c => c.Length > 0) ?? "", Refused = new NotedRow(line, code, sentence) };

    // Some sheets end every row, but not the names, with a separator.
    private bool EndsEmpty(string[] row) => row.Length > layout.Columns.Count && row.Skip(layout.Columns.Count).All(c => c.Length == 0);
}
