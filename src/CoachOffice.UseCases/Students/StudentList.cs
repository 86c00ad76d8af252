namespace CoachOffice.UseCases.Students;

/// <summary>One page of students found.</summary>
/// <param name="Rows">By family name, then given name.</param>
/// <param name="Total">How many match in all.</param>
/// <param name="Page">From 1.</param>
public sealed record StudentList(IReadOnlyList<StudentRow> Rows, int Total, int Page)
{
    /// <summary>Rows on a page.</summary>
    public const int PageSize = 50;

    /// <summary>No list is that long; a larger number is taken for this one.</summary>
    public const int LastPage = 1_000_000;

    /// <summary>How many pages there are; at least 1.</summary>
    public int Pages => Math.Max(1, (Total + PageSize - 1) / PageSize);
}
