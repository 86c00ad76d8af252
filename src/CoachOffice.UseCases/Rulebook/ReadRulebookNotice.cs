using CoachOffice.Drafting.Writing;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Looks whether a newer shipped book waits for the own changes to fit it, and which of them speak of a shipped entry that has changed since.</summary>
public sealed class ReadRulebookNotice(StandingBooks books)
{
    /// <summary>Null when there is nothing to say.</summary>
    public async Task<RulebookNotice?> Now(CancellationToken stop = default)
    {
        if (await books.InForce(stop) is not { } standing || standing.Loaded.Own.AreNone) return null;
        var tried = books.Trial.On(standing.Bases[0], OwnFiles.Of(standing.Loaded, [], []));
        return tried.Faults.Count + tried.Warnings.Count == 0 ? null : new RulebookNotice(tried.Faults.Count > 0, tried.Faults, tried.Warnings);
    }
}
