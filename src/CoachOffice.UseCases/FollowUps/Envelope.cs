namespace CoachOffice.UseCases.FollowUps;

/// <summary>Everything on the outside of a message.</summary>
public sealed record Envelope
{
    /// <summary>Left part and host, without angle brackets.</summary>
    public required string MessageId { get; init; }

    /// <summary>Message-ID of the plan's delivery, when this one follows it.</summary>
    public string? Follows { get; init; }

    public required string FromName { get; init; }

    public required string FromAddress { get; init; }

    public required string ToName { get; init; }

    public required string ToAddress { get; init; }

    public required DateTimeOffset Date { get; init; }

    /// <summary>Where reminders are stopped; null on a letter that is no reminder.</summary>
    public Uri? StopLink { get; init; }
}
