namespace CoachOffice.Domain.Safekeeping;

/// <summary>What a backup holds, in numbers.</summary>
/// <param name="Place">Name of its folder.</param>
/// <param name="Rows">All rows of all tables.</param>
/// <param name="Files">Stills and clips.</param>
/// <param name="Absent">Stills and clips that are named and were not there.</param>
/// <param name="Bytes">Length of all of it.</param>
public sealed record SafetyCopyContent(string Place, long Rows, int Files, int Absent, long Bytes);
