namespace CoachOffice.UseCases.Students;

/// <summary>Files of one student outside the database.</summary>
/// <param name="Letters">Full paths of mail files and of open files of devices; a missing one is no fault.</param>
/// <param name="Pictures">Hashes of stills and clips.</param>
public sealed record StudentFiles(IReadOnlyList<string> Letters, IReadOnlyList<string> Pictures);
