using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using MimeKit;

namespace CoachOffice.UseCases.Tests.FollowUps;

/// <summary>A family of letters that says what the test wants and remembers whom it wrote to.</summary>
internal sealed class PostCards : IOfficeLetter
{
    public const MessageKind Kind = MessageKind.ReviewReceived;

    public IReadOnlyList<MessageKind> Kinds => [Kind];

    public bool MayRepeat { get; set; } = true;

    public SendingVerdict Verdict { get; set; } = new SendingVerdict.Go();

    public MailRecipient? To { get; set; }

    public List<string> Written { get; } = [];

    public Task<SendingVerdict> MayGo(OfficeFacts facts, CancellationToken stop) => Task.FromResult(Verdict);

    public Task<MailRecipient?> Recipient(OfficeFacts facts, CancellationToken stop) => Task.FromResult(To ?? facts.StudentsMail);

    public Task<MimeMessage> Write(OfficeFacts facts, MailRecipient recipient, CancellationToken stop)
    {
        Written.Add(recipient.Address);
        return Task.FromResult(MailForm.Of(new Letter("A card", "Hello\n", "<p>Hello</p>"), new Envelope
        {
            MessageId = $"{facts.Message.StableName}@localhost",
            FromName = facts.Practice.Name,
            FromAddress = "office@localhost",
            ToName = recipient.Name,
            ToAddress = recipient.Address,
            Date = facts.Now.ToDateTimeOffset(),
        }));
    }

    public Task<string> Addressee(Message message, CancellationToken stop) => Task.FromResult(To?.Name ?? "");
}
