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

    /// <summary>One message more.</summary>
    public SweepResult With(SendingResult one) => one switch
    {
        SendingResult.Sent => this with { Sent = Sent + 1 },
        SendingResult.PutOff => this with { PutOff = PutOff + 1 },
        SendingResult.Skipped => this with { Skipped = Skipped + 1 },
        SendingResult.NeedsAttention => this with { NeedAttention = NeedAttention + 1 },
        _ => this with { TriedAgainLater = TriedAgainLater + 1 },
    };
}
