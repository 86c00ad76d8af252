using CoachOffice.Domain.Measuring;

namespace CoachOffice.SeedDemo.Swings;

/// <summary>What a swing is held against, and what practice does to it.</summary>
/// <param name="Club">The club read.</param>
/// <param name="HeightCm">Stature in cm.</param>
/// <param name="SpeedGoal">Wanted club speed in m/s, or null.</param>
/// <param name="Response">What practice does.</param>
internal sealed record SwingBody(Club Club, double HeightCm, double? SpeedGoal, Response Response);
