namespace CoachOffice.Data.Moving;

/// <summary>A table in both databases after a move.</summary>
/// <param name="From">What it held where it came from.</param>
/// <param name="To">What it holds now where it went.</param>
public sealed record MovedPrint(TablePrint From, TablePrint To)
{
    /// <summary>True when both hold the same.</summary>
    public bool Same => From == To;
}
