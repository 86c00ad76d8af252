namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>How a file is laid out.</summary>
/// <param name="Delimiter">What stands between cells.</param>
/// <param name="HeadRows">1, or 2 when a row of units follows the names.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="HeaderSha256">By which its mapping is remembered.</param>
public sealed record FileLayout(char Delimiter, int HeadRows, IReadOnlyList<FileColumn> Columns, string HeaderSha256);
