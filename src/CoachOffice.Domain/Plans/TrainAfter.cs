using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans;

/// <summary>A law of order: work on a measure waits while any of these other measures is out (not while it is unmeasured).</summary>
/// <param name="Work">The measure that waits.</param>
/// <param name="After">The measures it waits for.</param>
/// <param name="Because">One sentence why.</param>
public sealed record TrainAfter(MeasureId Work, IReadOnlyList<MeasureId> After, string Because);
