using CoachOffice.Domain;
using CoachOffice.Domain.Access;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Tells what saving changes of the rulebook would do, and saves nothing.</summary>
public sealed class TryRulebookEdit(StandingBooks books)
{
    /// <summary>The edition that would come, or every fault. It is tried on the edition in force, whichever the form began with.</summary>
    public async Task<Outcome<AdoptedEdition>> By(RulebookForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (EditChecks.Right(actor) is { } against) return against;
        var wrong = EditChecks.Edits(form.Edits).ToList();
        if (wrong.Count > 0) return Outcome<AdoptedEdition>.Refused(wrong);
        var standing = await books.MustStand(stop);
        var tried = EditProposal.Of(standing, form.Edits);
        return tried.Against(standing) is { Count: > 0 } faults ? Outcome<AdoptedEdition>.Refused(faults) : tried.After(standing);
    }
}
