using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>One entry that differs between two editions, with both texts.</summary>
/// <param name="Change">The entry and what became of it.</param>
/// <param name="Old">Its text in the first edition; null when it is not in it.</param>
/// <param name="New">Its text in the second edition; null when it is not in it.</param>
/// <param name="Lines">Both texts line by line.</param>
public sealed record EntryDifference(EntryChange Change, string? Old, string? New, IReadOnlyList<TextLine> Lines);
