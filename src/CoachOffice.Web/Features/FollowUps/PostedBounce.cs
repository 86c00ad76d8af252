namespace CoachOffice.Web.Features.FollowUps;

/// <summary>One notice as a mail provider posts it.</summary>
/// <param name="MessageId">Message-ID of the mail that came back, with or without angle brackets.</param>
/// <param name="Recipient">The address it was for.</param>
/// <param name="Status">The status code of RFC 3463, such as 5.1.1.</param>
internal sealed record PostedBounce(string? MessageId, string? Recipient, string? Status);

/// <summary>All notices of one post.</summary>
internal sealed record PostedBounces(IReadOnlyList<PostedBounce>? Notices);
