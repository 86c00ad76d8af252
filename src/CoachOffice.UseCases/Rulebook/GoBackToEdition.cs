using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Takes an earlier edition's own changes again, on the shipped book of today, as a new edition.</summary>
public sealed class GoBackToEdition(StandingBooks books, EditionPress press, EditionClash clash)
{
    /// <summary>The new edition, or why not: the changes no longer fit the shipped book, or somebody saved meanwhile.</summary>
    /// <param name="number">The edition whose own changes are wanted.</param>
    /// <param name="begunWith">The edition in force when the person decided.</param>
    /// <param name="why">The reason, for the history.</param>
    /// <param name="actor">Who wants it.</param>
    /// <param name="stop">Ends it early.</param>
    public async Task<Outcome<AdoptedEdition>> To(int number, int begunWith, string why, Actor actor, CancellationToken stop = default)
    {
        if (EditChecks.Right(actor) is { } against) return against;
        if (EditChecks.Why(why) is { } missing) return missing;
        var standing = await books.MustStand(stop);
        if (standing.Edition.Number != begunWith) return Outcome<AdoptedEdition>.Refused(await clash.Since(begunWith, actor, stop));
        if (await books.Numbered(number, stop) is not { } wanted) return new Refusal("edition-not-found", $"There is no edition {number} of the rulebook.");
        var tried = books.Trial.Of(standing.Bases, OwnFiles.Of(wanted, [], []));
        if (tried.Against(standing) is { Count: > 0 } faults) return Outcome<AdoptedEdition>.Refused(faults);
        var saved = await press.Take(tried, standing, new EditionWish(EditionKind.WentBack, why.Trim(), actor), stop);
        return saved == Saved.Yes ? tried.After(standing) : Outcome<AdoptedEdition>.Refused(await clash.Since(begunWith, actor, stop));
    }
}
