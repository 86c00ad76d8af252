namespace CoachOffice.Data.Moving;

/// <summary>A table as it is copied.</summary>
/// <param name="Name">Its name, the same in both databases.</param>
/// <param name="Columns">By name, so that both databases read them in the same order.</param>
/// <param name="Counted">The column the database numbers by itself, where there is one.</param>
internal sealed record MovedTable(string Name, IReadOnlyList<MovedColumn> Columns, string? Counted)
{
    /// <summary>The name in quotes.</summary>
    public string Quoted => $"\"{Name}\"";

    /// <summary>The columns in quotes, with commas.</summary>
    public string ColumnList => string.Join(", ", Columns.Select(c => $"\"{c.Name}\""));
}
