using MimeKit;

namespace CoachOffice.UseCases.FollowUps.Texts;

/// <summary>Lets a text go the way of mail: the same outbox, lease and last look; only the door at the end is another.</summary>
/// <param name="door">The door.</param>
/// <param name="number">E.164.</param>
internal sealed class TextDeparture(ITextDoor door, string number) : IMailDoor
{
    public Task<Handover> HandOver(MimeMessage mail, CancellationToken cancellationToken) =>
        door.HandOver(new TextMessage(mail.MessageId!.Split('@')[0], number, mail.TextBody!.Trim()), cancellationToken);

    /// <summary>Words under the message's own name.</summary>
    public static MimeMessage Of(string name, string words) => new() { MessageId = $"{name}@text.invalid", Body = new TextPart("plain") { Text = words } };
}
