using NodaTime;

namespace CoachOffice.UseCases;

/// <summary>The program's one clock, cut to the milliseconds both databases keep: what is read back equals what was written.</summary>
public sealed class MillisecondClock(TimeProvider time) : IClock
{
    /// <inheritdoc/>
    public Instant GetCurrentInstant() => Instant.FromUnixTimeMilliseconds(time.GetUtcNow().ToUnixTimeMilliseconds());
}
