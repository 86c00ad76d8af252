namespace CoachOffice.Data.Students;

/// <summary>A column of a table that names a student.</summary>
/// <param name="Table">The table.</param>
/// <param name="Column">The column.</param>
public sealed record StudentTie(string Table, string Column)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Table}.{Column}";
}
