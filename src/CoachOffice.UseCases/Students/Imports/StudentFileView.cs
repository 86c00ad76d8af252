using CoachOffice.Domain.Students.Imports;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>A list as it would be brought in.</summary>
public sealed record StudentFileView
{
    /// <summary>Rows on a page.</summary>
    public const int PageSize = 50;

    public required StudentFile File { get; init; }

    /// <summary>All rows of the list, counted by what becomes of them.</summary>
    public required StudentFileOutcome Would { get; init; }

    /// <summary>The rows of this page.</summary>
    public required IReadOnlyList<PreviewedRow> Rows { get; init; }

    /// <summary>What the rows are narrowed down to; null is all.</summary>
    public required RowFate? Fate { get; init; }

    /// <summary>From 1.</summary>
    public required int Page { get; init; }

    /// <summary>At least 1.</summary>
    public required int Pages { get; init; }
}
