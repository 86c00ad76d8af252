using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>A fault of the rulebook as it would be.</summary>
/// <param name="Fault">What and where; in a changed entry the lines are those of the entry's own text.</param>
/// <param name="Entry">The practice's own or changed entry it stands in, or the shipped worked case that comes out otherwise; null elsewhere.</param>
public sealed record EntryFault(Fault Fault, EntryId? Entry)
{
    /// <summary>What is wrong, said beside the entry's name: of a worked case, whose name is long, without saying it again.</summary>
    public string Message => Entry is { Kind: EntryKind.Case } && Entry.Key.Split(": ", 2) is [_, var name]
        ? Fault.Message.Replace($" (in \"{name}\")", "", StringComparison.Ordinal).Replace($" (in \"{name}\": ", " (", StringComparison.Ordinal)
        : Fault.Message;
}
