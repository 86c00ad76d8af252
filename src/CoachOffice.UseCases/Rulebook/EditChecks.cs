using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Own;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>What is wrong with a wish to change the rulebook before any rule is read.</summary>
internal static class EditChecks
{
    public const int LongestWhy = 500;

    public static Refusal? Right(Actor actor)
    {
        ArgumentNullException.ThrowIfNull(actor);
        return actor.MayChangeRules ? null : NotAllowed.To("change the rulebook");
    }

    public static Refusal? Why(string? why) => string.IsNullOrWhiteSpace(why)
        ? new("why-missing", "Say in a few words why; whoever reads the history will want to know.", nameof(OwnRulesForm.Why))
        : why.Trim().Length > LongestWhy ? new("why-too-long", $"Say why in at most {LongestWhy} letters.", nameof(OwnRulesForm.Why)) : null;

    public static IEnumerable<Refusal> Edits(IReadOnlyList<EntryEdit> edits)
    {
        if (edits.Count == 0) yield return new("nothing-changed", "Nothing was changed.");
        foreach (var twice in edits.GroupBy(e => e.Id).Where(g => g.Count() > 1)) yield return new("entry-twice", $"{twice.Key} is changed twice here; change it once.");
        foreach (var edit in edits.Where(e => e.Deed == EntryDeed.Write))
        {
            if (string.IsNullOrWhiteSpace(edit.Text)) yield return new("entry-empty", $"The text of {edit.Id} is empty; to take it away, remove it.");
            else if (OwnFile.IdIn(edit.Id.Kind, edit.Text) is { } written && written != edit.Id)
                yield return new("entry-renamed", $"This is the text of {written}, not of {edit.Id}. Keep its name, or add the new entry and remove the old one.");
        }

        foreach (var edit in edits.Where(e => e.Deed == EntryDeed.Remove && e.Id.Kind is EntryKind.Name or EntryKind.Dosage))
            yield return new("entry-needed", $"A rulebook needs its {edit.Id}; change it instead.");
    }
}
