using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.UseCases.Tests.Fixtures;

namespace CoachOffice.UseCases.Tests.Rulebook;

/// <summary>A change of the rulebook as somebody makes it: gathered, then put into force.</summary>
internal static class RulebookEdits
{
    /// <summary>The new edition, or why not; what was gathered then waits.</summary>
    public static async Task<Outcome<AdoptedEdition>> Edit(this TestOffice office, Actor actor, int edition, string why, params EntryEdit[] edits)
    {
        await office.Must((KeepChange keep) => keep.Of(new WorkForm(edition, edits) { Unfinished = true }, actor));
        return await office.Do((PutInForce put) => put.By(why, actor));
    }

    /// <summary>The new edition; a refusal fails the test.</summary>
    public static async Task<AdoptedEdition> MustEdit(this TestOffice office, Actor actor, int edition, string why, params EntryEdit[] edits)
    {
        var edited = await office.Edit(actor, edition, why, edits);
        Assert.True(edited.Succeeded, string.Join("; ", edited.Refusals.Select(r => r.Sentence)));
        return edited.Value;
    }

    /// <summary>An entry as it is in force.</summary>
    public static async Task<string> Text(this TestOffice office, EntryId id) => (await office.Must((OpenEntry open) => open.Of(id, office.Owner))).InForce!;
}
