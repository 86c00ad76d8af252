using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>A row of a list as it is shown before anything is kept.</summary>
/// <param name="Line">Its line in the list, from 1.</param>
/// <param name="Fate">What becomes of it.</param>
/// <param name="Name">As far as a name can be made out.</param>
/// <param name="Facts">Birth date, mail, phone and guardian, as far as given.</param>
/// <param name="Sentence">Why, or what is odd about it; may be empty.</param>
/// <param name="There">The student who is there.</param>
public sealed record PreviewedRow(int Line, RowFate Fate, string Name, string Facts, string Sentence, StudentId? There);
