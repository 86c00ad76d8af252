namespace CoachOffice.UseCases.FollowUps;

/// <summary>What one sweep did.</summary>
/// <param name="Sent">Handed over.</param>
/// <param name="PutOff">Due again later: quiet hours, a day's rest, a lesson today, one encouragement too many.</param>
/// <param name="Skipped">Not wanted any more.</param>
/// <param name="TriedAgainLater">Did not go; it will be tried again.</param>
/// <param name="NeedAttention">Did not go; a person has to look.</param>
public sealed record SweepResult(int Sent, int PutOff, int Skipped, int TriedAgainLater, int NeedAttention)
{
    public static SweepResult Nothing { get; } = new(0, 0, 0, 0, 0);

    /// <summary>No other message would fare better now.</summary>
    public bool ServerDown { get; init; }

    /// <summary>As many as the server takes in a minute have gone.</summary>
    public bool RateReached { get; init; }

    /// <summary>Nothing more goes out in this sweep.</summary>
    public bool EndsEarly => ServerDown || RateReached;

    /// <summary>Both together.</summary>
    public SweepResult And(SweepResult other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new SweepResult(Sent + other.Sent, PutOff + other.PutOff, Skipped + other.Skipped, TriedAgainLater + other.TriedAgainLater, NeedAttention + other.NeedAttention)
        {
            ServerDown = ServerDown || other.ServerDown,
            RateReached = RateReached || other.RateReached,
        };
    }

    /// <summary>One message more.</summary>
    public SweepResult With(SendingResult one) => one switch
    {
        SendingResult.Sent => this with { Sent = Sent + 1 },
        SendingResult.PutOff => this with { PutOff = PutOff + 1 },
        SendingResult.Skipped => this with { Skipped = Skipped + 1 },
        SendingResult.NeedsAttention => this with { NeedAttention = NeedAttention + 1 },
        SendingResult.RateReached => this with { RateReached = true },
        _ => this with { TriedAgainLater = TriedAgainLater + 1, ServerDown = one == SendingResult.ServerDown },
    };
}
