using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>How long messages are held.</summary>
/// <param name="Lease">From the claim, or the last renewal.</param>
/// <param name="NeededToSend">What must be left of it when one is handed over: longer than a mail server may take.</param>
public sealed record BatchTimes(Duration Lease, Duration NeededToSend);
