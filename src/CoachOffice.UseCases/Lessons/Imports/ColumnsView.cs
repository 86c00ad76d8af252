using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>What a coach needs to say what a file's columns hold.</summary>
public sealed record ColumnsView
{
    public required string FileName { get; init; }

    public required string StudentName { get; init; }

    public required Hand Hand { get; init; }

    public required int Rows { get; init; }

    public required IReadOnlyList<FileColumn> Columns { get; init; }

    /// <summary>The first values of each column.</summary>
    public required IReadOnlyList<IReadOnlyList<string>> Samples { get; init; }

    /// <summary>What a column can hold.</summary>
    public required IReadOnlyList<Measure> Measures { get; init; }

    /// <summary>Words to choose clubs for, by column, where there are few enough.</summary>
    public required IReadOnlyList<IReadOnlyList<string>> Words { get; init; }

    /// <summary>The form as said before, or as far as it fills itself.</summary>
    public required ColumnsForm Form { get; init; }

    /// <summary>What is still open in it.</summary>
    public required IReadOnlyList<Refusal> Open { get; init; }

    /// <summary>True when files with these columns were told before.</summary>
    public required bool IsRemembered { get; init; }
}
