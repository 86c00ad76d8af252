using CoachOffice.Domain.Plans;

namespace CoachOffice.Domain.Measuring;

/// <summary>What grading needs to know besides the value: the rulebook's ranges, and the student's club, age, stature and speed goal.</summary>
public sealed class GradingContext
{
    /// <summary>Lengths in the rulebook are for an adult of this stature.</summary>
    private const double AdultCentimetres = 175;

    /// <summary>Below this age a stature is needed before lengths are graded.</summary>
    private const int GrownUpEnough = 15;

    /// <summary>Slower video blurs the moment of impact too much to grade beyond borderline.</summary>
    private const double FastEnoughFramesPerSecond = 100;

    private readonly Rulebook _book;
    private readonly LessonFacts _facts;

    /// <summary>The context of one lesson.</summary>
    public GradingContext(Rulebook book, LessonFacts facts)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(facts);
        _book = book;
        _facts = facts;
    }

    /// <summary>True when nobody read the measure itself.</summary>
    public bool IsDerived(MeasureId measure)
    {
        // Contexts are made more often than they are asked this, so no table of the readings is kept.
        foreach (var reading in _facts.Readings) if (reading.Measure.Value == measure.Value) return false;
        return true;
    }

    /// <summary>The range and step this student's value is held against.</summary>
    public HeldRange Hold(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        var none = new HeldRange(null, measure.Step, false);
        if (measure.Step is not { } step || _book.RangeOf(measure.Id, _facts.Club) is not { } wanted) return none;
        if (wanted.FromGoal) return Goal(measure) is { } goal ? new HeldRange(new Limits(goal.Value, null), step, true) : none;
        var scale = measure.ScalesWithStature ? Stature(_facts.Student) : 1;
        return new HeldRange(Scaled(Adjusted(measure.Id, wanted.Limits), scale), Math.Round(step * scale, 9), false);
    }

    /// <summary>True when the value may grade at most borderline: slow video at impact, or a young student of unknown height.</summary>
    public bool CapsAtBorderline(Measure measure, MeasuredValue taken) => IsSlowVideo(measure, taken) || NeedsHeight(measure);

    /// <summary>Read at impact from video of fewer than 100 frames a second.</summary>
    public static bool IsSlowVideo(Measure measure, MeasuredValue taken)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(taken);
        return measure.NeedsFastVideo && taken.Instrument is Instrument.Video or Instrument.Eye && taken.FrameRate < FastEnoughFramesPerSecond;
    }

    /// <summary>A length of a student under 15 whose height is not known.</summary>
    public bool NeedsHeight(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.ScalesWithStature && _facts.Student.HeightCm is null && _facts.Age < GrownUpEnough;
    }

    private static double Stature(StudentFacts student) => (student.HeightCm ?? AdultCentimetres) / AdultCentimetres;

    private static Limits Scaled(Limits limits, double scale) => new(Times(limits.Low, scale), Times(limits.High, scale));

    private static double? Times(double? edge, double scale) => edge is { } value ? Math.Round(value * scale, 9) : null;

    private Limits Adjusted(MeasureId measure, Limits limits)
    {
        foreach (var rule in _book.Adjustments)
            if (rule.Measure == measure && _facts.Age >= rule.FromAge && rule.Levels?.Contains(_facts.Student.Level) != false) limits = new Limits(limits.Low + rule.LowBy, limits.High + rule.HighBy);
        return limits;
    }

    private Quantity? Goal(Measure measure) =>
        measure.Id == NamedMeasures.ClubSpeed && _facts.Student.ClubSpeedGoal is { } goal ? goal.In(measure.Unit) : null;
}
