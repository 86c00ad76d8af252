using NodaTime;

namespace CoachOffice.SeedDemo.Making;

/// <summary>The clock of the year that is being made up: it stands where it is set.</summary>
internal sealed class SeedClock(Instant begin) : TimeProvider
{
    /// <summary>Now, in the year being made.</summary>
    public Instant Now { get; private set; } = begin;

    /// <summary>Goes on; never back, so that what was written later also stands later.</summary>
    public void Advance(Instant to) => Now = Instant.Max(Now, to);

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => Now.ToDateTimeOffset();
}
