namespace CoachOffice.Domain.Bookings;

/// <summary>A place beside others that overlap.</summary>
/// <param name="Index">From 0.</param>
/// <param name="Count">How many stand side by side.</param>
public sealed record Lane(int Index, int Count);
