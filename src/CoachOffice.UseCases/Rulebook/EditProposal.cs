using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Reading.Own;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>The edition in force with some entries done otherwise, tried but not adopted.</summary>
public static class EditProposal
{
    /// <summary>The book as it would be, or every fault; a fault of a typed entry stands in that entry's own lines.</summary>
    public static TriedBook Of(BookTrial trial, StandingBook standing, IReadOnlyList<EntryEdit> edits)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(standing);
        ArgumentNullException.ThrowIfNull(edits);
        var tried = trial.Of(standing.Bases, Files(standing.Loaded.Own, standing, edits));
        var typed = Kinds(standing, edits);
        return tried with { Faults = [.. tried.Faults.Select(f => InEntry(f, typed))], Warnings = [.. tried.Warnings.Select(f => InEntry(f, typed))] };
    }

    private static List<KeyValuePair<string, string>> Files(OwnRules own, StandingBook standing, IReadOnlyList<EntryEdit> edits)
    {
        var removed = edits.Where(e => e.Deed == EntryDeed.Remove).Select(e => e.Id).ToList();
        var touched = edits.Select(e => e.Id).Concat(own.Written.Concat(own.Removed).Select(e => e.Id).Where(id => IsCaseOf(id, removed))).ToHashSet();

        // What never shipped is simply dropped.
        var shipped = removed.Where(id => own.Written.FirstOrDefault(e => e.Id == id) is not { Was: null });
        return
        [
            .. OwnFiles.Of(standing.Loaded, touched, shipped),
            .. edits.Where(e => e.Deed == EntryDeed.Write).Select(e => KeyValuePair.Create(OwnFiles.PathOf(e.Id), OwnFile.Of(e.Id.Kind, e.Text!))),
        ];
    }

    private static Dictionary<string, EntryKind> Kinds(StandingBook standing, IReadOnlyList<EntryEdit> edits) =>
        standing.Loaded.Own.Written.Select(e => e.Id).Concat(edits.Select(e => e.Id)).Distinct().ToDictionary(OwnFiles.PathOf, id => id.Kind, StringComparer.Ordinal);

    private static Fault InEntry(Fault fault, Dictionary<string, EntryKind> typed) => typed.TryGetValue(fault.File, out var kind) ? OwnFile.InTyped(fault, kind) : fault;

    private static bool IsCaseOf(EntryId id, IEnumerable<EntryId> removed) =>
        id.Kind == EntryKind.Case && removed.Any(r => r.Kind == EntryKind.Pattern && id.Key.StartsWith($"{r.Key}: ", StringComparison.Ordinal));
}
