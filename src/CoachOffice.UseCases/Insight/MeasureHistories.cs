namespace CoachOffice.UseCases.Insight;

/// <summary>A student's measures over time, those some plan worked on first.</summary>
/// <param name="StudentName">Full name.</param>
/// <param name="Measures">By the book's order of measures.</param>
public sealed record MeasureHistories(string StudentName, IReadOnlyList<MeasureHistory> Measures);
