using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps.Texts;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Where messages lie that left as files.</summary>
public sealed class MessageFiles(MailDoors mail, TextDoors texts)
{
    /// <summary>The places of one, whether anything lies there or not.</summary>
    public IReadOnlyList<string> Of(Message message) => [mail.FileOf(message), texts.FileOf(message)];
}
