using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>One row of a list: a student as they would be entered, or why it is none.</summary>
internal sealed record ReadStudentRow
{
    public required int Line { get; init; }

    public NotedRow? Refused { get; init; }

    /// <summary>Null when it was refused.</summary>
    public StudentDetails? Details { get; init; }

    public bool IsArchived { get; init; }

    public bool NoReminders { get; init; }

    /// <summary>The cells as they stood, for whoever mends a refused row.</summary>
    public required IReadOnlyList<string> Cells { get; init; }

    /// <summary>As far as a name can be made out.</summary>
    public string Name { get; init; } = "";
}
