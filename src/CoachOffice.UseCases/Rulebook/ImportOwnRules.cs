using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Takes the practice's own changes from a file, instead of all it had, as the next edition.</summary>
public sealed class ImportOwnRules(StandingBooks books, EditionPress press, EditionClash clash)
{
    /// <summary>The edition that came, or on a dry run would come; or every fault with its place in the file, and then nothing is changed.</summary>
    public async Task<Outcome<AdoptedEdition>> From(OwnRulesForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (EditChecks.Right(actor) is { } against) return against;
        if (!form.DryRun && EditChecks.Why(form.Why) is { } missing) return missing;
        var standing = await books.MustStand(stop);
        var begunWith = form.Edition ?? standing.Edition.Number;
        if (standing.Edition.Number != begunWith) return Outcome<AdoptedEdition>.Refused(await clash.Since(begunWith, actor, stop));
        var tried = books.Trial.Of(standing.Bases, [KeyValuePair.Create(OwnFiles.Kept, form.Text)]);
        if (tried.Against(standing) is { Count: > 0 } faults) return Outcome<AdoptedEdition>.Refused(faults);
        if (form.DryRun) return tried.After(standing) with { Differences = BookChanges.InWords(standing.Loaded, tried.Loaded!), Book = tried.Loaded!.Book };
        var saved = await press.Take(tried, standing, new EditionWish(EditionKind.Import, form.Why.Trim(), actor), stop);
        return saved == Saved.Yes ? tried.After(standing) : Outcome<AdoptedEdition>.Refused(await clash.Since(begunWith, actor, stop));
    }
}
