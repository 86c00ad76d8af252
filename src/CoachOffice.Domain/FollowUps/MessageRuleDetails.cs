namespace CoachOffice.Domain.FollowUps;

/// <summary>What a person decides about one kind of message.</summary>
public sealed record MessageRuleDetails(bool IsOn, int Timing, bool WaitsForCoach)
{
    /// <summary>Everything that is wrong, each with the field and what would be right.</summary>
    public IReadOnlyList<Refusal> Check(MessageKind kind)
    {
        var traits = MessageTraits.Of(kind);
        var wrong = new List<Refusal>();
        if (!IsOn && !traits.MayBeOff) wrong.Add(new("message-kind-on", "This letter is written by a press of yours; there is nothing to turn off.", nameof(IsOn)));
        if (WaitsForCoach && !traits.MayWait) wrong.Add(new("message-kind-waits", "This letter answers something that was done just now; it cannot wait.", nameof(WaitsForCoach)));
        if (traits.Unit != TimingUnit.None && (Timing < traits.Least || Timing > traits.Most)) wrong.Add(new("message-timing", $"Write a whole number from {traits.Least} to {traits.Most}.", nameof(Timing)));
        return wrong;
    }
}
