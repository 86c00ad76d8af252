using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using NodaTime;

namespace CoachOffice.Domain.Measuring;

/// <summary>A take read a second time without sight of the first, by the same coach later or by another: what a practice's own reading error is known from.</summary>
public sealed class SecondReading
{
    private SecondReading()
    {
    }

    public Guid Id { get; private set; }

    public LessonId LessonId { get; private set; }

    public TakeId TakeId { get; private set; }

    public AccountId AskedBy { get; private set; }

    public Instant AskedAt { get; private set; }

    /// <summary>Who read the take first.</summary>
    public AccountId FirstBy { get; private set; }

    /// <summary>Who read it again; null while it waits.</summary>
    public AccountId? ReadBy { get; private set; }

    public Instant? ReadAt { get; private set; }

    /// <summary>Every measure that was read both times; empty while it waits.</summary>
    public IReadOnlyList<ReadTwice> Doubles { get; private set; } = [];

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>Read by the same person twice.</summary>
    public bool IsSameReader => ReadBy == FirstBy;

    /// <summary>Asks for a take to be read again.</summary>
    public static SecondReading Ask(Guid id, Take take, AccountId firstBy, AccountId by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(take);
        return new SecondReading { Id = id, LessonId = take.LessonId, TakeId = take.Id, FirstBy = firstBy, AskedBy = by, AskedAt = now };
    }

    /// <summary>It was read again. Only once: a third look is another record.</summary>
    public void Read(IReadOnlyList<ReadTwice> doubles, AccountId by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(doubles);
        if (ReadAt is not null) throw new InvalidOperationException("This take was read again before.");
        (Doubles, ReadBy, ReadAt) = (doubles, by, now);
    }
}
