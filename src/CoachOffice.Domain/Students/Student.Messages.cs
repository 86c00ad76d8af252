using CoachOffice.Domain.FollowUps;
using NodaTime;

namespace CoachOffice.Domain.Students;

/// <content>What may be sent to a student.</content>
public sealed partial class Student
{
    /// <summary>Set when the student asked for no more encouragement.</summary>
    public Instant? MessagesStoppedAt { get; private set; }

    /// <summary>Set when they asked for no more reminders of lessons.</summary>
    public Instant? AppointmentsStoppedAt { get; private set; }

    /// <summary>Set when they asked for no more plans in the post.</summary>
    public Instant? PlansStoppedAt { get; private set; }

    /// <summary>Set when they asked for no more reminders about money.</summary>
    public Instant? MoneyStoppedAt { get; private set; }

    /// <summary>Set when the guardian of a minor withdrew: nothing goes out until the guardian agrees again.</summary>
    public Instant? GuardianWithdrewAt { get; private set; }

    /// <summary>How messages reach them.</summary>
    public ContactWishes Contact { get; private set; } = ContactWishes.Usual;

    /// <summary>When messages of a purpose were stopped, or null.</summary>
    public Instant? StoppedAt(MessagePurpose purpose) => purpose switch
    {
        MessagePurpose.Appointment => AppointmentsStoppedAt,
        MessagePurpose.Plan => PlansStoppedAt,
        MessagePurpose.Encouragement => MessagesStoppedAt,
        MessagePurpose.Money => MoneyStoppedAt,
        _ => null,
    };

    /// <summary>No more of a purpose.</summary>
    public void Stop(MessagePurpose purpose, Instant now) => Set(purpose, StoppedAt(purpose) ?? now);

    /// <summary>Asked for anew.</summary>
    public void Allow(MessagePurpose purpose) => Set(purpose, null);

    /// <summary>The guardian withdraws what was agreed.</summary>
    public void GuardianWithdraws(Instant now) => GuardianWithdrewAt ??= now;

    /// <summary>The guardian agreed again.</summary>
    public void GuardianAgrees() => GuardianWithdrewAt = null;

    /// <summary>The number text messages go to on a day, as E.164: the guardian's of a minor, never the minor's own; null when there is none.</summary>
    public string? TextNumberOn(LocalDate day)
    {
        if (ErasedAt is not null) return null;
        return PhoneNumber.E164(BirthDate is { } born && Ages.IsMinor(born, day) ? Guardian?.Phone : Phone);
    }

    /// <summary>Takes over how messages are to reach them.</summary>
    public void Reach(ContactWishes wishes) => Contact = wishes;

    private void Set(MessagePurpose purpose, Instant? at)
    {
        if (purpose == MessagePurpose.Appointment) AppointmentsStoppedAt = at;
        if (purpose == MessagePurpose.Plan) PlansStoppedAt = at;
        if (purpose == MessagePurpose.Encouragement) MessagesStoppedAt = at;
        if (purpose == MessagePurpose.Money) MoneyStoppedAt = at;
    }
}
