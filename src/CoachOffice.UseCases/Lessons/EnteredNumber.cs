namespace CoachOffice.UseCases.Lessons;

/// <summary>A number as typed, with the unit typed behind it when there was one.</summary>
public sealed record EnteredNumber(double Value, string? Unit);
