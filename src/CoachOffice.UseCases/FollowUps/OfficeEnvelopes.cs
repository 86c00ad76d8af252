using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>The outside of a letter without a plan.</summary>
public static class OfficeEnvelopes
{
    /// <summary>Host of the office's own names: Message-ID and UID.</summary>
    public static string HostOf(OfficeFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return new Uri(facts.Practice.PublicAddress).Host;
    }

    /// <summary>The practice's mail address.</summary>
    public static string SenderOf(OfficeFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return facts.Practice.MailFrom.Length > 0 ? facts.Practice.MailFrom : $"office@{HostOf(facts)}";
    }

    /// <summary>From the practice to who reads it; where its kind may be stopped, with the way to stop it.</summary>
    public static Envelope For(OfficeFacts facts, MailRecipient recipient)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(recipient);
        return new Envelope
        {
            MessageId = $"{facts.Message.StableName}@{HostOf(facts)}",
            FromName = facts.Practice.Name,
            FromAddress = SenderOf(facts),
            ToName = recipient.Name,
            ToAddress = recipient.Address,
            Date = facts.Now.ToDateTimeOffset(),
            StopLink = facts.StopLink,
        };
    }
}
