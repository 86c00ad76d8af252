using CoachOffice.Domain.Access;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Lessons;

/// <summary>One meeting, or one set of clips, of one student with one club: readings, observations, notes.</summary>
public sealed class Lesson
{
    private readonly List<Reading> _readings = [];
    private readonly List<Take> _takes = [];

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

    /// <summary>The reading sheet it is read by; empty means every measure of the rulebook.</summary>
    public string Sheet { get; private set; } = "";

    /// <summary>Its swings as each camera or device saw them.</summary>
    public IReadOnlyList<Take> Takes => _takes;

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

    /// <summary>Picks the reading sheet.</summary>
    public void ReadBy(string sheet) => Sheet = sheet;

    /// <summary>Makes the standing readings exactly these: unchanged rows stay, others are withdrawn and new ones added, each to the take it was read from.</summary>
    public void Record(IReadOnlyList<TakenReading> taken, INewIds ids, Instant now)
    {
        ArgumentNullException.ThrowIfNull(ids);
        foreach (var gone in Readings.Where(r => !taken.Any(r.Says)).ToList()) gone.Withdraw(now);
        foreach (var fresh in taken.Where(t => !Readings.Any(r => r.Says(t))).ToList()) _readings.Add(Reading.Take(ids.Next(), TakeFor(fresh, ids, now), fresh, now));
    }

    /// <summary>The take that shows a swing from a view; a new one when there is none.</summary>
    public Take Open(View view, int swing, INewIds ids, Instant now)
    {
        ArgumentNullException.ThrowIfNull(ids);
        var take = _takes.Find(t => t.View == view && t.Swing == swing);
        if (take is not null) return take;
        take = Take.Of(TakeId.From(ids.Next()), Id, view, swing, now);
        _takes.Add(take);
        return take;
    }

    /// <summary>Says how fast a take's video runs: its readings from video are kept anew with that rate, for it is part of their error.</summary>
    public void RunsAt(Take take, FramesPerSecond? rate, INewIds ids, Instant now)
    {
        ArgumentNullException.ThrowIfNull(take);
        ArgumentNullException.ThrowIfNull(ids);
        take.RunsAt(rate);
        foreach (var old in Readings.Where(r => r.TakeId == take.Id && r.Instrument == Instrument.Video && !Nullable.Equals(r.FrameRate, rate?.Value)).ToList())
        {
            old.Withdraw(now);
            _readings.Add(old.At(ids.Next(), rate, now));
        }
    }

    private Take TakeFor(TakenReading taken, INewIds ids, Instant now)
    {
        var take = Open(SeenFrom(taken), taken.Swing, ids, now);
        if (take.FrameRate is null && taken.Instrument == Instrument.Video) take.RunsAt(taken.FrameRate is { } rate ? new FramesPerSecond(rate) : null);
        return take;
    }

    // What can be read from either side was read where the swing was filmed; face-on when nobody said.
    private View SeenFrom(TakenReading taken) =>
        taken.View != View.Either ? taken.View
        : _takes.Exists(t => t.Swing == taken.Swing && t.View == View.DownTheLine) && !_takes.Exists(t => t.Swing == taken.Swing && t.View == View.FaceOn) ? View.DownTheLine
        : View.FaceOn;
}
