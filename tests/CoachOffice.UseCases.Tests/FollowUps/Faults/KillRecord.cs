namespace CoachOffice.UseCases.Tests.FollowUps.Faults;

/// <summary>What the database and the mail server said right after a kill.</summary>
/// <param name="Accepted">The last message the server took from the node that died, when the database did not have it as sent.</param>
/// <param name="Begun">A message that must not be repeated by guess and was on its way.</param>
internal sealed record KillRecord(string? Accepted, string? Begun);
