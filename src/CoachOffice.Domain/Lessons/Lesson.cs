using CoachOffice.Domain.Access;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Lessons;

/// <summary>One meeting, or one set of clips, of one student with one club: readings, observations, notes.</summary>
public sealed class Lesson
{
    private readonly List<Reading> _readings = [];

    private Lesson()
    {
    }

    public LessonId Id { get; private set; }

    public StudentId StudentId { get; private set; }

    public AccountId CoachId { get; private set; }

    /// <summary>The practice's day.</summary>
    public LocalDate HeldOn { get; private set; }

    public Club Club { get; private set; }

    public LessonKind Kind { get; private set; }

    /// <summary>What was seen, in the coach's words; may go to the student.</summary>
    public string Observations { get; private set; } = "";

    /// <summary>For coaches only.</summary>
    public string Notes { get; private set; } = "";

    public Instant CreatedAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>All readings, withdrawn ones too.</summary>
    public IReadOnlyList<Reading> AllReadings => _readings;

    /// <summary>The readings that stand.</summary>
    public IEnumerable<Reading> Readings => _readings.Where(r => r.WithdrawnAt is null);

    /// <summary>A new record.</summary>
    public static Lesson Start(LessonId id, StudentId student, AccountId coach, LessonHeading heading, Instant now)
    {
        ArgumentNullException.ThrowIfNull(heading);
        return new Lesson { Id = id, StudentId = student, CoachId = coach, HeldOn = heading.HeldOn, Club = heading.Club, Kind = heading.Kind, CreatedAt = now };
    }

    /// <summary>Changes day and club.</summary>
    public void Head(LessonHeading heading)
    {
        ArgumentNullException.ThrowIfNull(heading);
        (HeldOn, Club, Kind) = (heading.HeldOn, heading.Club, heading.Kind);
    }

    /// <summary>Changes the words.</summary>
    public void Write(string observations, string notes) => (Observations, Notes) = (observations.Trim(), notes.Trim());

    /// <summary>Makes the standing readings exactly these: unchanged rows stay, others are withdrawn and new ones added.</summary>
    public void Record(IReadOnlyList<TakenReading> taken, INewIds ids, Instant now)
    {
        ArgumentNullException.ThrowIfNull(ids);
        foreach (var gone in Readings.Where(r => !taken.Any(r.Says)).ToList()) gone.Withdraw(now);
        foreach (var fresh in taken.Where(t => !Readings.Any(r => r.Says(t))).ToList()) _readings.Add(Reading.Take(ids.Next(), Id, fresh, now));
    }
}
