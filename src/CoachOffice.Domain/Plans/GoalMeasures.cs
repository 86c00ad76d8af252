using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Plans;

/// <summary>The measures that serve a goal.</summary>
/// <param name="Goal">The goal.</param>
/// <param name="Measures">Measures serving it with any club.</param>
/// <param name="DriverOnly">Measures serving it with the driver only.</param>
public sealed record GoalMeasures(Goal Goal, IReadOnlyList<MeasureId> Measures, IReadOnlyList<MeasureId> DriverOnly);
