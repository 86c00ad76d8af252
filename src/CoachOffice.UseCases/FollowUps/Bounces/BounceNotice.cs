namespace CoachOffice.UseCases.FollowUps.Bounces;

/// <summary>What a mail server says about one recipient of one message.</summary>
/// <param name="MessageId">Message-ID of the mail that came back, without angle brackets: the only thing it is found by.</param>
/// <param name="Address">The address it was for.</param>
/// <param name="Status">The status code of RFC 3463: class, subject and detail.</param>
public sealed record BounceNotice(string MessageId, string Address, string Status);
