using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Tries changes on the edition in force and says in which entry each fault stands.</summary>
internal static class WorkTrial
{
    public static WorkCheck Check(StandingBook standing, IReadOnlyList<EntryEdit> edits) => Check(standing, edits, EditProposal.Of(standing, edits));

    public static WorkCheck Check(StandingBook standing, IReadOnlyList<EntryEdit> edits, TriedBook tried)
    {
        var files = standing.Loaded.Own.Written.Select(e => e.Id).Concat(edits.Select(e => e.Id)).Distinct().ToDictionary(OwnFiles.PathOf, id => id, StringComparer.Ordinal);
        return new WorkCheck
        {
            Faults = [.. tried.Faults.Select(f => In(f, files))],
            Warnings = [.. tried.Warnings.Select(f => In(f, files))],
            Anomalies = tried.Anomalies,
            Changes = tried.Loaded is { } loaded ? BookChanges.Between(standing.Loaded, loaded) : [],
        };
    }

    private static EntryFault In(Fault fault, Dictionary<string, EntryId> files) => new(fault, files.GetValueOrDefault(fault.File));
}
