using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What holds for every claimed message without a plan, around what its family says. Pure; the first law that speaks decides.</summary>
public static class OfficeLaw
{
    /// <summary>Before the family is asked: nothing goes out about who was put away or asked for none, and nothing that may have arrived is repeated by guess.</summary>
    public static SendingVerdict? Before(OfficeFacts facts, bool mayRepeat)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (facts.Student is { ErasedAt: not null } or { ArchivedAt: not null }) return new SendingVerdict.Never("student-archived");
        if (StopLaw.Of(facts.Student, facts.Message.Kind) is { } stopped) return stopped;
        return facts.Message.SendingAt is not null && !mayRepeat ? new SendingVerdict.Ask(Problems.SentUnknown) : null;
    }

    /// <summary>After it said go: somebody has to be there to read it, and by night only what cannot wait goes.</summary>
    public static SendingVerdict? After(OfficeFacts facts, MailRecipient? recipient)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (recipient is not { Address.Length: > 0 }) return new SendingVerdict.Ask(facts.IsMinor ? "no-guardian" : facts.Student is null ? "no-recipient" : "no-address");
        if (StopLaw.OfAddress(recipient.Address, facts.Bounced) is { } bounced) return bounced;
        var hours = facts.Student is { } student && MessagePurposes.Of(facts.Message.Kind) != MessagePurpose.Office ? facts.Dates.For(student.Contact) : facts.Dates;
        return !facts.Message.AtOnce && hours.IsQuiet(facts.Now) ? new SendingVerdict.Later(hours.AfterQuiet(facts.Now)) : null;
    }
}
