using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>A time at which a coach is busy elsewhere, from a calendar they brought. What they do then is not kept.</summary>
public sealed class BusyTime
{
    private BusyTime()
    {
    }

    public Guid Id { get; private set; }

    public AccountId CoachId { get; private set; }

    /// <summary>What the coach calls the calendar it came from; a second import under the name replaces the first.</summary>
    public string Source { get; private set; } = "";

    public Instant From { get; private set; }

    /// <summary>Exclusive.</summary>
    public Instant Until { get; private set; }

    /// <summary>A busy time.</summary>
    public static BusyTime Of(Guid id, AccountId coach, string source, Interval time)
    {
        ArgumentNullException.ThrowIfNull(source);
        return new BusyTime { Id = id, CoachId = coach, Source = source.Trim(), From = time.Start, Until = time.End };
    }
}
