using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Saves changes of rulebook entries as the next edition, which new drafts are made by from then on.</summary>
public sealed class EditRulebook(StandingBooks books, EditionPress press, EditionClash clash)
{
    /// <summary>The new edition, or why not: every fault of the whole book with its place, each worked case that comes out otherwise, or who saved meanwhile.</summary>
    public async Task<Outcome<AdoptedEdition>> By(RulebookForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (EditChecks.Right(actor) is { } against) return against;
        var wrong = EditChecks.Edits(form.Edits).Concat(EditChecks.Why(form.Why) is { } missing ? [missing] : Array.Empty<Refusal>()).ToList();
        if (wrong.Count > 0) return Outcome<AdoptedEdition>.Refused(wrong);
        var standing = await books.MustStand(stop);
        if (standing.Edition.Number != form.Edition) return Outcome<AdoptedEdition>.Refused(await clash.Since(form.Edition, actor, stop));
        var tried = EditProposal.Of(standing, form.Edits);
        if (tried.Against(standing) is { Count: > 0 } faults) return Outcome<AdoptedEdition>.Refused(faults);
        var saved = await press.Take(tried, standing, new EditionWish(EditionKind.Edit, form.Why.Trim(), actor), stop);
        return saved == Saved.Yes ? tried.After(standing) : Outcome<AdoptedEdition>.Refused(await clash.Since(form.Edition, actor, stop));
    }
}
