namespace CoachOffice.Domain.Bookings;

/// <summary>One share as a multiple of another, without unit; 1: the same.</summary>
/// <param name="Value">As seen.</param>
/// <param name="Low">With 95 % confidence at least.</param>
/// <param name="High">With 95 % confidence at most.</param>
public sealed record RiskRatio(double Value, double Low, double High);
