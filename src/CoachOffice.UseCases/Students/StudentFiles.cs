namespace CoachOffice.UseCases.Students;

/// <summary>Files of one student outside the database.</summary>
/// <param name="Letters">Full paths of mail files; a missing one is no fault.</param>
/// <param name="Pictures">Hashes of stills and clips.</param>
public sealed record StudentFiles(IReadOnlyList<string> Letters, IReadOnlyList<string> Pictures);
