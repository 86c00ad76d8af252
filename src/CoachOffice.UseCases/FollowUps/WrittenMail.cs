using MimeKit;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>A mail ready to be handed over.</summary>
/// <param name="Departure">The message it carries.</param>
/// <param name="Mail">As it leaves.</param>
/// <param name="Links">Private links minted for it; they are forgotten when it certainly did not leave.</param>
public sealed record WrittenMail(Departure Departure, MimeMessage Mail, IReadOnlyList<Guid> Links);
