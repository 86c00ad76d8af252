namespace CoachOffice.Domain.Lessons.Imports;

/// <summary>What stands before the decimals in a file's numbers; the other one may only group thousands.</summary>
public enum DecimalMark
{
    Point,
    Comma,
}
