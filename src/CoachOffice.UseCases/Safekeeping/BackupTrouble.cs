using System.Data.Common;
using CoachOffice.Data;

namespace CoachOffice.UseCases.Safekeeping;

/// <summary>What may keep a backup from being made and is nobody's defect, in a sentence.</summary>
internal static class BackupTrouble
{
    private const int Longest = 500;

    /// <summary>Null for a defect of ours.</summary>
    public static string? InWords(Exception failure, string folder) => failure switch
    {
        UnauthorizedAccessException => Cut($"The office may not write into {folder}. Let it, or name another folder; earlier backups stay, and it is tried again within the hour."),
        _ when DatabaseFaults.IsFull(failure) => Cut($"There is no room left for a backup in {folder}. Make some, or name another folder; earlier backups stay, and it is tried again within the hour."),
        IOException => Cut($"The backup could not be written into {folder}: {failure.Message.TrimEnd('.')}. Earlier backups stay, and it is tried again within the hour."),
        DbException => Cut($"The database could not be read for a backup: {failure.Message.TrimEnd('.')}. It is tried again within the hour."),
        _ => null,
    };

    public static string Cut(string sentence) => sentence.Length <= Longest ? sentence : sentence[..Longest];
}
