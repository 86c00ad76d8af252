namespace CoachOffice.Data.Safekeeping;

/// <summary>A file of a backup.</summary>
/// <param name="Name">Its name in the backup's folder; for stills and clips their hash, under which they lie in <c>media</c> beside it.</param>
/// <param name="Bytes">How long it is.</param>
/// <param name="Sha256">What it holds, in small hexadecimal digits.</param>
public sealed record BackupFile(string Name, long Bytes, string Sha256);
