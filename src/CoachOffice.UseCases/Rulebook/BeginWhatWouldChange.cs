using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Replay;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Begins to compare an edited rulebook with the one in force over the practice's past lessons, before it is saved. Changes nothing, so it leaves no audit row.</summary>
public sealed class BeginWhatWouldChange(OfficeDb db, Rulebooks rulebooks, Replays replays)
{
    /// <summary>The hash of the edited book, whose comparison <see cref="WhatWouldChange"/> now tells of; one the account began before ends.</summary>
    public async Task<Outcome<string>> By(CompiledRulebook edited, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(edited);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } account) return NotAllowed.To("compare rulebooks");
        replays.Begin(account, LessonReplay.Between(await rulebooks.InForce(db, stop), edited));
        return edited.Sha256;
    }
}
