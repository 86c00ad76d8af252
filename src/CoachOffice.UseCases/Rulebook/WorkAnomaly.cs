using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Checks;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>What entries of the rulebook as it would be make of each other.</summary>
/// <param name="Anomaly">What and where.</param>
/// <param name="IsNew">False when the edition in force has the same, so that the change did not bring it.</param>
public sealed record WorkAnomaly(Anomaly Anomaly, bool IsNew)
{
    /// <summary>True when it concerns this entry.</summary>
    public bool Concerns(EntryId? entry) => entry is not null && Anomaly.Entries.Any(e => e.Entry == entry);
}
