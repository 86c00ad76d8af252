using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Comparing bands of numbers with open ends.</summary>
internal static class Bounds
{
    /// <summary>True when no written end of the inner band lies beyond the outer one.</summary>
    public static bool Inside(Limits inner, Limits outer) =>
        (inner.Low is not { } low || outer.Contains(low)) && (inner.High is not { } high || outer.Contains(high));
}
