using CoachOffice.Domain.Access;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using NodaTime;

namespace CoachOffice.UseCases.Measuring;

/// <summary>A re-test whose readings are in.</summary>
/// <param name="Plan">Of which plan.</param>
/// <param name="Look">The re-test.</param>
/// <param name="Baseline">What it is compared with.</param>
/// <param name="After">The new value.</param>
/// <param name="HeldOn">The day the swings were made.</param>
/// <param name="Actor">Who recorded it.</param>
public sealed record JudgedRetest(Plan Plan, Retest Look, Baseline Baseline, MeasuredValue After, LocalDate HeldOn, Actor Actor)
{
    /// <summary>The rung it belongs to.</summary>
    public PlanStage Stage => Plan.Stages.Single(s => s.Id == Look.StageId);
}
