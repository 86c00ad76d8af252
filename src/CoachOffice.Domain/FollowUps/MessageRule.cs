namespace CoachOffice.Domain.FollowUps;

/// <summary>What the practice decided about one kind of message. There is no row until somebody decides; then the usual holds.</summary>
public sealed class MessageRule
{
    private MessageRule()
    {
    }

    public Guid Id { get; private set; }

    /// <summary>Unique.</summary>
    public MessageKind Kind { get; private set; }

    /// <summary>False: it is not written, and what waits of it is not sent.</summary>
    public bool IsOn { get; private set; }

    /// <summary>In the kind's own unit; see <see cref="MessageTraits.Unit"/>.</summary>
    public int Timing { get; private set; }

    /// <summary>True when a coach has to say yes to each.</summary>
    public bool WaitsForCoach { get; private set; }

    /// <summary>The wording in force; null: the shipped one.</summary>
    public Guid? WordingId { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>What holds until somebody decides: it goes by itself, at the usual time, in the shipped words. Payment letters wait for a coach.</summary>
    public static MessageRule Usual(Guid id, MessageKind kind) => new()
    {
        Id = id,
        Kind = kind,
        IsOn = true,
        Timing = MessageTraits.Of(kind).Usual,
        WaitsForCoach = kind == MessageKind.PaymentDue,
    };

    /// <summary>Takes over what a person decided; checked before by <see cref="MessageRuleDetails.Check"/>.</summary>
    public void Change(MessageRuleDetails details)
    {
        ArgumentNullException.ThrowIfNull(details);
        (IsOn, Timing, WaitsForCoach) = (details.IsOn, details.Timing, details.WaitsForCoach);
    }

    /// <summary>Other words from now on; null: the shipped ones.</summary>
    public void Use(MessageWording? wording) => WordingId = wording?.Id;
}
