namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>What kind of list a file is, as far as reading its rows is concerned.</summary>
/// <param name="Row">What one row holds, for sentences.</param>
/// <param name="MostRows">The most rows a file may have.</param>
/// <param name="HasUnits">True when heads of columns may name units, or a row of units may follow them.</param>
/// <param name="HasLineBreaks">True when a cell in quotes may go on in the next line, as notes do. Where none may, a quote that is never closed cannot swallow the rows after it.</param>
internal sealed record SheetKind(string Row, int MostRows, bool HasUnits, bool HasLineBreaks)
{
    /// <summary>A launch monitor's file.</summary>
    public static SheetKind Swings { get; } = new("swing", 50_000, HasUnits: true, HasLineBreaks: false);

    /// <summary>A list of students.</summary>
    public static SheetKind Students { get; } = new("student", 20_000, HasUnits: false, HasLineBreaks: true);
}
