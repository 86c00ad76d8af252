namespace CoachOffice.Domain.Plans;

/// <summary>One entry that differs between two editions.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Change">What became of it.</param>
public sealed record EntryChange(EntryId Id, ChangeKind Change)
{
    /// <summary>E.g. <c>drill head-against-shade changed</c>.</summary>
    public override string ToString() => $"{Id} {Terms.Of(Change)}";
}
