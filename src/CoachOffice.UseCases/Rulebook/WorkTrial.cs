using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Tries changes on the edition in force and says in which entry each fault stands.</summary>
internal static class WorkTrial
{
    public static WorkCheck Check(StandingBook standing, IReadOnlyList<EntryEdit> edits, TriedBook tried, StandingAnomalies before)
    {
        var files = standing.Loaded.Own.Written.Select(e => e.Id).Concat(edits.Select(e => e.Id)).Distinct().ToDictionary(OwnFiles.PathOf, id => id, StringComparer.Ordinal);
        return new WorkCheck
        {
            Faults = [.. tried.Faults.Select(f => In(f, files, standing))],
            Warnings = [.. tried.Warnings.Select(f => In(f, files, standing))],
            Anomalies = before.Compared(standing, tried.Anomalies),
            Book = tried.Loaded?.Book,
            Changes = tried.Loaded is { } loaded ? BookChanges.Between(standing.Loaded, loaded) : [],
        };
    }

    private static EntryFault In(Fault fault, Dictionary<string, EntryId> files, StandingBook standing) => new(fault, files.GetValueOrDefault(fault.File) ?? ShippedCase(fault, standing));

    // A worked case of the program's own that comes out otherwise is what most changes of a range meet first, so it must be found.
    private static EntryId? ShippedCase(Fault fault, StandingBook standing) =>
        standing.Loaded.Cases.FirstOrDefault(one => one.File == fault.File && one.Line == fault.Line) is { } found ? EntryId.Case(found.Pattern.Value, found.Name) : null;
}
