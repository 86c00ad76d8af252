using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps.Texts;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>How a message without a plan goes: by text or by mail, and each mail with its own way out, of its own purpose (RFC 8058).</summary>
public sealed class DepartureOf(PrivateLinks links, TextRoute texts)
{
    /// <summary>The departure.</summary>
    public Departure By(IOfficeLetter family, OfficeFacts facts, MailRecipient recipient, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(family);
        ArgumentNullException.ThrowIfNull(facts);
        return texts.Of(facts, family, stop) ?? new Departure(facts.Message, facts.Practice, family.MayRepeat, () => family.Write(WithStop(facts), recipient, stop));
    }

    private OfficeFacts WithStop(OfficeFacts facts) =>
        facts.Student is { } student && MessagePurposes.MayBeStopped(facts.Message.Kind)
            ? facts with { StopLink = new Uri($"{facts.Practice.PublicAddress}/stop/{links.MintStop(student.Id, MessagePurposes.Of(facts.Message.Kind))}") }
            : facts;
}
