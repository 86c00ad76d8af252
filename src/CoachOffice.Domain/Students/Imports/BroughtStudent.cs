using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Students.Imports;

/// <summary>What a list of students did to one student, so that it can be taken back.</summary>
public sealed record BroughtStudent
{
    /// <summary>The list.</summary>
    public required Guid FileId { get; init; }

    public required StudentId StudentId { get; init; }

    /// <summary>True when the list added the student; false when it filled empty fields.</summary>
    public required bool IsNew { get; init; }

    /// <summary>The fields it filled at a student who was there.</summary>
    public required IReadOnlyList<StudentField> Filled { get; init; }

    /// <summary>The student's version then; a higher one says that somebody changed them since.</summary>
    public required int StudentVersion { get; init; }
}
