using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Insight;

/// <summary>How many lessons were missed, with a reminder and without one.</summary>
/// <param name="First">First day looked at.</param>
/// <param name="Last">Last day.</param>
/// <param name="All">All lessons for which somebody marked whether the student came.</param>
/// <param name="Reminded">Those of which the student was reminded before they began.</param>
/// <param name="Others">Those without a reminder.</param>
/// <param name="SaidYes">Of the reminded, those where the student said that they are coming.</param>
public sealed record AttendanceView(LocalDate First, LocalDate Last, Missed All, Missed Reminded, Missed Others, Missed SaidYes)
{
    /// <summary>The reminded against the others, or null where there is too little to compare.</summary>
    public RiskRatio? Ratio => Reminded.Against(Others);
}
