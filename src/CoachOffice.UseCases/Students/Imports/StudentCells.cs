using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Imports;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Lessons.Imports;
using NodaTime;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>The cells of one row by what they hold. Whatever cannot be read is noted; the first reason is the row's.</summary>
internal sealed class StudentCells(IReadOnlyList<string> cells, StudentColumns columns, LocalDate today)
{
    private static readonly string[] Left = ["left", "l", "lh", "left handed", "left hand", "lefty"];
    private static readonly string[] Right = ["right", "r", "rh", "right handed", "right hand"];
    private static readonly string[] Yes = ["yes", "y", "true", "1", "x"];
    private static readonly string[] No = ["no", "n", "false", "0", ""];

    /// <summary>Why the row cannot be read, or null.</summary>
    public (string Code, string Sentence)? Wrong { get; private set; }

    /// <summary>The cell of a field, empty when no column holds it.</summary>
    public string Text(StudentField field) => columns.At(field) is { } at && at < cells.Count ? CsvSheet.Plain(cells[at]).Trim() : "";

    /// <summary>Given and family name.</summary>
    public (string Given, string Family) Name()
    {
        if (columns.At(StudentField.FullName) is null) return (Text(StudentField.GivenName), Text(StudentField.FamilyName));
        var whole = Text(StudentField.FullName);
        var comma = whole.IndexOf(',', StringComparison.Ordinal);
        if (columns.NameOrder == NameOrder.FamilyFirst && comma >= 0) return (whole[(comma + 1)..].Trim(), whole[..comma].Trim());
        var space = columns.NameOrder == NameOrder.FamilyFirst ? whole.IndexOf(' ', StringComparison.Ordinal) : whole.LastIndexOf(' ');
        if (space < 0) return (whole, "");
        var (first, last) = (whole[..space].Trim(), whole[(space + 1)..].Trim());
        return columns.NameOrder == NameOrder.FamilyFirst ? (last, first) : (first, last);
    }

    public LocalDate? BirthDate()
    {
        var cell = Text(StudentField.BirthDate);
        if (cell.Length == 0) return null;
        if (DayCell.Read(cell, columns.DayOrder) is not { } day) return Refuse<LocalDate?>("birth-date", $"Birth date: '{Short(cell)}' is no day of the calendar.", null);

        // Nobody is born in the future: "04.05.84" was 1984.
        return day > today && HasShortYear(cell) ? day.PlusYears(-100) : day;
    }

    public Guardian? GuardianOf()
    {
        var guardian = new Guardian { Name = Text(StudentField.GuardianName), Email = Text(StudentField.GuardianEmail), Phone = Text(StudentField.GuardianPhone), Relation = Text(StudentField.GuardianRelation) };
        return guardian.Name.Length + guardian.Email.Length + guardian.Phone.Length + guardian.Relation.Length == 0 ? null : guardian;
    }

    public Hand HandOf()
    {
        var word = Plain(Text(StudentField.Hand));
        if (word.Length == 0 || Right.Contains(word)) return Hand.Right;
        return Left.Contains(word) ? Hand.Left : Refuse("hand", $"{FieldWords.Of(StudentField.Hand)}: '{Short(word)}' is neither right nor left.", Hand.Right);
    }

    public bool Says(StudentField field)
    {
        var word = Plain(Text(field));
        if (No.Contains(word)) return false;
        return Yes.Contains(word) || Refuse("yes-no", $"{FieldWords.Of(field)}: '{Short(word)}' is neither yes nor no.", false);
    }

    /// <summary>A word of a closed list, or what stands when the cell is empty.</summary>
    public T Word<T>(StudentField field, T otherwise)
        where T : struct, Enum => Text(field) is { Length: > 0 } cell ? Member(cell, field, otherwise) : otherwise;

    /// <summary>Words of a closed list, set apart by commas.</summary>
    public IReadOnlyList<T> Words<T>(StudentField field)
        where T : struct, Enum => [.. Text(field).Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(word => Member(word, field, default(T)))];

    public int Whole(StudentField field, int otherwise)
    {
        var cell = Text(field);
        if (cell.Length == 0) return otherwise;
        return cell.Length < 6 && int.TryParse(cell, out var number) ? number : Refuse("number", $"{FieldWords.Of(field)}: '{Short(cell)}' is no whole number.", otherwise);
    }

    /// <summary>An amount in one unit or another, whichever column there is.</summary>
    public Quantity? Amount((StudentField Field, Unit Unit) one, (StudentField Field, Unit Unit) other)
    {
        var (field, unit) = columns.At(one.Field) is not null ? one : other;
        var cell = Text(field);
        if (cell.Length == 0) return null;
        return NumberEntry.One(cell).TryGet(out var number) ? new Quantity(number, unit) : Refuse<Quantity?>("number", $"{FieldWords.Of(field)}: '{Short(cell)}' is no number.", null);
    }

    public IReadOnlyList<StudentLimit> Limits()
    {
        if (LimitText.Read(Text(StudentField.Limits)) is { } limits) return limits;
        return Refuse<IReadOnlyList<StudentLimit>>("limits", "Limits: write each as region, status, day and who told it, such as 'lower-back current 2026-01-12 student', with a semicolon between two.", []);
    }

    private T Member<T>(string cell, StudentField field, T otherwise)
        where T : struct, Enum =>
        Terms.TryParse<T>(Plain(cell).Replace(' ', '-'), out var member) ? member : Refuse("word", $"{FieldWords.Of(field)}: '{Short(cell)}' is none of {string.Join(", ", Terms.All<T>())}.", otherwise);

    private T Refuse<T>(string code, string sentence, T otherwise)
    {
        Wrong ??= (code, sentence);
        return otherwise;
    }

    private static string Plain(string cell) => StudentSearch.Fold(cell.Replace('-', ' '));

    private static bool HasShortYear(string cell)
    {
        var parts = cell.Split(' ')[0].Split('/', '-', '.');
        return parts is [{ Length: < 3 }, _, { Length: 2 }];
    }

    private static string Short(string cell) => cell.Length <= 40 ? cell : cell[..40] + "...";
}
