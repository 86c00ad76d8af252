namespace CoachOffice.Domain.Measuring;

/// <summary>The judgement of a re-test: whether the number really moved, and where it stands.</summary>
public sealed record Verdict
{
    /// <summary>What the change shows.</summary>
    public required Movement Movement { get; init; }

    /// <summary>Where the new value stands.</summary>
    public required Standing Standing { get; init; }

    /// <summary>New value minus old, in the measure's unit.</summary>
    public required Quantity Change { get; init; }

    /// <summary>A smaller change than this may be reading error alone (95 %), in the measure's unit.</summary>
    public required Quantity SmallestRealChange { get; init; }

    /// <summary>With <see cref="Movement.CannotTell"/>: how many more readings would settle it; null when no sensible number does and the setup is the limit.</summary>
    public int? MoreReadings { get; init; }
}
