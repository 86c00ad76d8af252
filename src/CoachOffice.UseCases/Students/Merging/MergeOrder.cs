using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Students.Merging;

/// <summary>Which record goes into which, and what was chosen of the two.</summary>
/// <param name="Stays">The record that stays.</param>
/// <param name="StaysVersion">Its version as it was shown.</param>
/// <param name="Goes">The record that goes.</param>
/// <param name="GoesVersion">Its version as it was shown.</param>
/// <param name="Taken">Fields taken from the one that goes; the others stay as they are.</param>
public sealed record MergeOrder(StudentId Stays, int StaysVersion, StudentId Goes, int GoesVersion, IReadOnlyCollection<string> Taken);
