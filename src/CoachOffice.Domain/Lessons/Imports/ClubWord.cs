using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Lessons.Imports;

/// <summary>What a file's word for a club means.</summary>
/// <param name="Word">As it stands in the file.</param>
/// <param name="Club">The group with ranges of its own; null leaves such swings out, e.g. of a putter.</param>
public sealed record ClubWord(string Word, Club? Club);
