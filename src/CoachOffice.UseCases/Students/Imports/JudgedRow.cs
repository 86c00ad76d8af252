using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Imports;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>A row held against the students who are there.</summary>
/// <param name="Row">As read.</param>
/// <param name="Fate">What becomes of it.</param>
/// <param name="Sentence">Why, or what is odd about it; may be empty.</param>
internal sealed record JudgedRow(ReadStudentRow Row, RowFate Fate, string Sentence)
{
    /// <summary>The student who is there.</summary>
    public StudentId? There { get; init; }

    /// <summary>Their details with the empty fields filled.</summary>
    public StudentDetails? Filled { get; init; }

    /// <summary>Which fields are filled.</summary>
    public IReadOnlyList<StudentField> Fields { get; init; } = [];
}
