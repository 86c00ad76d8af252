using CoachOffice.Data.FollowUps;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>A mail that left.</summary>
/// <param name="Sending">Which, by whom, when.</param>
/// <param name="AfterSent">What else changes with it.</param>
public sealed record SentMail(Sending Sending, Func<IServiceProvider, Task>? AfterSent);
