using CoachOffice.Domain;
using CoachOffice.UseCases.Lessons.Imports;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>What a person needs to say what a list's columns hold.</summary>
public sealed record StudentColumnsView
{
    public required string FileName { get; init; }

    public required int Rows { get; init; }

    public required IReadOnlyList<FileColumn> Columns { get; init; }

    /// <summary>The first values of each column.</summary>
    public required IReadOnlyList<IReadOnlyList<string>> Samples { get; init; }

    /// <summary>The form as said before, or as far as it fills itself.</summary>
    public required StudentColumnsForm Form { get; init; }

    /// <summary>What is still open in it.</summary>
    public required IReadOnlyList<Refusal> Open { get; init; }

    /// <summary>True when lists with these columns were told before.</summary>
    public required bool IsRemembered { get; init; }
}
