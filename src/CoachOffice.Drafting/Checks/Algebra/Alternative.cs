using System.Numerics;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Checks.Algebra;

/// <summary>One way in which `when` can hold.</summary>
/// <param name="Box">The lessons.</param>
/// <param name="Seen">The findings out of range it rests on, by measure and cells: one of them must be at least moderate.</param>
internal sealed record Alternative(Box Box, IReadOnlyList<(MeasureId Measure, BigInteger Cells)> Seen)
{
    /// <summary>Both at once; null when they exclude each other.</summary>
    public Alternative? And(Alternative other) => Box.And(other.Box) is { } both ? new Alternative(both, [.. Seen, .. other.Seen]) : null;
}
