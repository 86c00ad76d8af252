namespace CoachOffice.UseCases.Watching;

/// <summary>How the office stands at a moment, in numbers; null where nobody has looked yet.</summary>
/// <param name="Due">Messages whose time has come.</param>
/// <param name="OldestDueSeconds">How long the one due longest has waited.</param>
/// <param name="Unknown">Messages that may have arrived.</param>
/// <param name="Attention">Messages a person has to look at.</param>
/// <param name="BackupAgeSeconds">Age of the last good backup; null also when there is none.</param>
public sealed record OfficeReading(double? Due, double? OldestDueSeconds, double? Unknown, double? Attention, double? BackupAgeSeconds)
{
    /// <summary>Before the first look.</summary>
    public static OfficeReading None { get; } = new(null, null, null, null, null);
}
