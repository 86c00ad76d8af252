using CoachOffice.Domain.Lessons.Imports;

namespace CoachOffice.Domain.Students.Imports;

/// <summary>How a list of students is to be read and brought in; remembered for the next list with the same column names.</summary>
public sealed record StudentColumns
{
    /// <summary>A column that is not named is left out.</summary>
    public IReadOnlyList<StudentColumn> Columns { get; init; } = [];

    /// <summary>Needed when a column holds whole names.</summary>
    public NameOrder? NameOrder { get; init; }

    /// <summary>Needed when days such as 03/04/2012 stand in the column of birth dates.</summary>
    public DayOrder? DayOrder { get; init; }

    public WhenThere WhenThere { get; init; }

    public SharedMail SharedMail { get; init; }

    /// <summary>The column that holds a field, or null.</summary>
    public int? At(StudentField field) => Columns.FirstOrDefault(c => c.Field == field)?.Column;
}
