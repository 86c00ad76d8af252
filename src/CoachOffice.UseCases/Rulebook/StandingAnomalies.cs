using CoachOffice.Drafting;
using CoachOffice.Drafting.Checks;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>What the entries of the edition in force make of each other, worked out once for each edition, so that an editor hears what is new with a change and what was there before.</summary>
public sealed class StandingAnomalies(BookShelf shelf)
{
    private Known? _last;

    /// <summary>What reasoning found in a tried book, each with whether the edition in force has it too.</summary>
    internal IReadOnlyList<WorkAnomaly> Compared(StandingBook standing, IReadOnlyList<Anomaly> found) =>
        found.Count == 0 ? [] : Compared(found, Of(standing).AtOnce.Value);

    /// <summary>What many generated students show of a tried book, likewise.</summary>
    internal IReadOnlyList<WorkAnomaly> Unheard(StandingBook standing, CompiledRulebook tried)
    {
        var found = RuleBaseCheck.Unheard(tried);
        return found.Count == 0 ? [] : Compared(found, Of(standing).Unheard.Value);
    }

    private static IReadOnlyList<WorkAnomaly> Compared(IReadOnlyList<Anomaly> found, HashSet<string> before) => [.. found.Select(anomaly => new WorkAnomaly(anomaly, !before.Contains(Sign(anomaly))))];

    private Known Of(StandingBook standing)
    {
        if (_last is { } last && last.Edition == standing.Edition.Number && last.Sha256 == standing.Edition.Sha256) return last;
        return _last = new Known(
            standing.Edition.Number,
            standing.Edition.Sha256,
            new(() => Signs(shelf.Check(shelf.Compile(standing.Loaded)))),
            new(() => Signs(RuleBaseCheck.Unheard(shelf.Compile(standing.Loaded)))));
    }

    private static HashSet<string> Signs(IReadOnlyList<Anomaly> anomalies) => [.. anomalies.Select(Sign)];

    private static string Sign(Anomaly anomaly) => $"{anomaly.Kind} {string.Join(' ', anomaly.Entries.Select(e => $"{e.Kind}:{e.Id}"))} {anomaly.Sentence}";

    private sealed record Known(int Edition, string Sha256, Lazy<HashSet<string>> AtOnce, Lazy<HashSet<string>> Unheard);
}
