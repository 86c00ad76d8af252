using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What people asked not to get. Pure; asked about every claimed message, with a plan or without.</summary>
public static class StopLaw
{
    /// <summary>Nothing goes to an address from which mail came back for good; another address is another matter.</summary>
    public static SendingVerdict.Ask? OfAddress(string address, IReadOnlySet<string> bounced)
    {
        ArgumentNullException.ThrowIfNull(bounced);
        return bounced.Count > 0 && bounced.Contains(MailBounce.HashOf(address)) ? new SendingVerdict.Ask(Problems.AddressBounced) : null;
    }

    /// <summary>The stop that stands against a kind, or null. A plan a coach approved, and all that a withdrawn guardian no longer gets, is told to a person: they find another way.</summary>
    public static SendingVerdict? Of(Student? student, MessageKind kind)
    {
        var purpose = MessagePurposes.Of(kind);
        if (student is null || purpose == MessagePurpose.Office) return null;
        if (student.GuardianWithdrewAt is not null) return new SendingVerdict.Ask(Problems.GuardianWithdrew);
        if (!MessagePurposes.MayBeStopped(kind) || student.StoppedAt(purpose) is null) return null;
        return purpose == MessagePurpose.Plan ? new SendingVerdict.Ask(Problems.PlansStopped) : new SendingVerdict.Never(Problems.MessagesStopped);
    }
}
