using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>What a check-in led to.</summary>
/// <param name="PlanPaused">The plan rests because of a pain report; only the coach restarts it.</param>
/// <param name="Emergency">Show "seek emergency care now" and the number, and nothing else.</param>
/// <param name="EmergencyNumber">The practice's local emergency number.</param>
/// <param name="StageOpened">A count was reached on two separate days and the next rung began.</param>
/// <param name="LookOn">The day the number is read again, as it stands now.</param>
public sealed record CheckInResult(bool PlanPaused, bool Emergency, string EmergencyNumber, bool StageOpened, LocalDate? LookOn);
