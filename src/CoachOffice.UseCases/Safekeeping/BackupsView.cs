using CoachOffice.Domain.Safekeeping;

namespace CoachOffice.UseCases.Safekeeping;

/// <summary>What a page about backups shows.</summary>
/// <param name="Settings">When and where they are made.</param>
/// <param name="Folder">The folder they lie in.</param>
/// <param name="IsBeside">True when that is inside the data folder.</param>
/// <param name="Standing">Names of the backups that lie there, newest first.</param>
/// <param name="Latest">What came of the last ones, newest first.</param>
/// <param name="Good">The last one that was brought back and found the same.</param>
public sealed record BackupsView(BackupSettings Settings, string Folder, bool IsBeside, IReadOnlyList<string> Standing, IReadOnlyList<SafetyCopy> Latest, SafetyCopy? Good);
