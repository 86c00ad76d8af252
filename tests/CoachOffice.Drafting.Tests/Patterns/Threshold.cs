namespace CoachOffice.Drafting.Tests.Patterns;

/// <summary>Where a pattern begins to fire, the other readings being as they are.</summary>
/// <param name="Measure">The measure of its root.</param>
/// <param name="Short">The last value with which it does not fire yet.</param>
/// <param name="Beyond">The next value, with which it does.</param>
public sealed record Threshold(string Measure, double Short, double Beyond);
