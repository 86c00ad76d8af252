using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Reading.Own;

/// <summary>An entry a practice wrote or took away.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Was">Mark of the shipped entry it stands for, as it was when the change was made; null where there was none.</param>
public sealed record OwnEntry(EntryId Id, string? Was);
