using CoachOffice.Domain.Access;

namespace CoachOffice.UseCases.Access;

/// <summary>
/// The practice's own details, asked for on every page and changed once a year. A change made in this program is seen at once, one made by another
/// program on the same database within five seconds.
/// </summary>
public sealed class KeptPractice(TimeProvider time)
{
    private static readonly TimeSpan Life = TimeSpan.FromSeconds(5);

    private Kept? _kept;

    /// <summary>The practice as read a moment ago; null when it has to be read.</summary>
    internal Practice? Fresh => Volatile.Read(ref _kept) is { } kept && time.GetElapsedTime(kept.ReadAt) < Life ? kept.Practice : null;

    /// <summary>Where to note what is about to be read: a change meanwhile outdates it.</summary>
    internal Reading Begin() => new(this, time.GetTimestamp(), Volatile.Read(ref _kept));

    /// <summary>The practice was changed here.</summary>
    internal void Forget() => Volatile.Write(ref _kept, new Kept(null, 0));

    /// <summary>A reading under way.</summary>
    internal readonly struct Reading(KeptPractice keeper, long began, Kept? before)
    {
        public void Keep(Practice? practice)
        {
            if (practice is not null) Interlocked.CompareExchange(ref keeper._kept, new Kept(practice, began), before);
        }
    }

    internal sealed record Kept(Practice? Practice, long ReadAt);
}
