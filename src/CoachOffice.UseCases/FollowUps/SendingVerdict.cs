using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What happens with a claimed message.</summary>
public abstract record SendingVerdict
{
    private SendingVerdict()
    {
    }

    /// <summary>It goes now.</summary>
    public sealed record Go : SendingVerdict;

    /// <summary>It is due again later.</summary>
    public sealed record Later(Instant Again) : SendingVerdict;

    /// <summary>It is not wanted any more.</summary>
    public sealed record Never(string Why) : SendingVerdict;

    /// <summary>A person has to look.</summary>
    public sealed record Ask(string Problem) : SendingVerdict;
}
