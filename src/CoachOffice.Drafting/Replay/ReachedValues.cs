using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Replay;

/// <summary>Lessons with this club and a reading of this measure may be drafted otherwise.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Club">The club; null for any.</param>
/// <param name="Outside">Only readings below the low or above the high edge count, in the measure's unit; an open end counts nothing. Null for any value.</param>
public sealed record ReachedValues(MeasureId Measure, Club? Club, Limits? Outside);
