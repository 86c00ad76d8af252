using CoachOffice.Domain;
using CoachOffice.Domain.Access;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Ends a comparison of rulebooks early; what was found by then stays to be read.</summary>
public sealed class StopWhatWouldChange(Replays replays)
{
    /// <summary>True, or a refusal when this account began none here.</summary>
    public Task<Outcome<bool>> For(Actor actor)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (actor.Account is not { } account || replays.Of(account) is not { } run)
            return Task.FromResult<Outcome<bool>>(new Refusal("comparison-not-found", "No comparison is under way; begin it again."));
        run.Stop();
        return Task.FromResult<Outcome<bool>>(true);
    }
}
