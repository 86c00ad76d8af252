using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.Domain.Lessons;

/// <summary>One number read from one recorded swing. Insert-only: a wrong one is marked, never changed.</summary>
public sealed class Reading
{
    private Reading()
    {
    }

    public Guid Id { get; private set; }

    public LessonId LessonId { get; private set; }

    /// <summary>The take it was read from.</summary>
    public TakeId TakeId { get; private set; }

    public MeasureId Measure { get; private set; } = MeasureId.From("unset");

    /// <summary>In the measure's own unit.</summary>
    public double Value { get; private set; }

    /// <summary>Which swing of the lesson, from 1.</summary>
    public int Swing { get; private set; }

    public Instrument Instrument { get; private set; }

    /// <summary>Frames per second, when known.</summary>
    public double? FrameRate { get; private set; }

    public Instant EnteredAt { get; private set; }

    /// <summary>Set when the coach replaced or removed it.</summary>
    public Instant? WithdrawnAt { get; private set; }

    /// <summary>A reading as taken.</summary>
    public static Reading Take(Guid id, Take from, TakenReading taken, Instant now)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(taken);
        return new Reading
        {
            Id = id,
            LessonId = from.LessonId,
            TakeId = from.Id,
            Measure = taken.Measure,
            Value = taken.Value.Value,
            Swing = taken.Swing,
            Instrument = taken.Instrument,
            FrameRate = taken.FrameRate,
            EnteredAt = now,
        };
    }

    /// <summary>True when this row says the same as a reading entered again.</summary>
    public bool Says(TakenReading taken)
    {
        ArgumentNullException.ThrowIfNull(taken);
        return Measure == taken.Measure && Swing == taken.Swing && Value.Equals(taken.Value.Value)
            && Instrument == taken.Instrument && Nullable.Equals(FrameRate, taken.FrameRate);
    }

    /// <summary>The same number from the same swing, whose video runs at another rate than was said.</summary>
    public Reading At(Guid id, FramesPerSecond? rate, Instant now) => new()
    {
        Id = id,
        LessonId = LessonId,
        TakeId = TakeId,
        Measure = Measure,
        Value = Value,
        Swing = Swing,
        Instrument = Instrument,
        FrameRate = rate?.Value,
        EnteredAt = now,
    };

    /// <summary>Marks it as replaced or wrong.</summary>
    public void Withdraw(Instant now) => WithdrawnAt ??= now;
}
