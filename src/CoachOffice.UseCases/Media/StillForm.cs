using CoachOffice.Domain.Measuring.Landmarks;

namespace CoachOffice.UseCases.Media;

/// <summary>A still as said and marked by a person.</summary>
/// <param name="Shows">What it shows.</param>
/// <param name="Marks">What is marked, of the points that were shown; others stay as they are kept.</param>
public sealed record StillForm(StillShows Shows, StillMarks Marks);
