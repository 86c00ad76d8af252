using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Tests.Patterns;

/// <summary>The circumstances every pattern is tried in; a class below <c>Rules</c> gives the smallest lesson on which its pattern fires, and where its root's threshold lies.</summary>
public abstract class PatternRuleTests
{
    /// <summary>The pattern's id.</summary>
    protected internal abstract string Pattern { get; }

    protected abstract Club Club { get; }

    /// <summary>Wanted club-head speed in m/s, where the pattern is about it.</summary>
    protected virtual int? SpeedGoal => null;

    /// <summary>Only what it takes: without any one of them it does not fire.</summary>
    protected abstract IReadOnlyList<MeasuredValue> Readings { get; }

    /// <summary>Two values of the root one small step apart, of which only the second fires.</summary>
    protected abstract Threshold Threshold { get; }

    [Fact]
    public void Fires_on_these_readings() => Assert.True(Fires(Readings));

    [Fact]
    public void Fires_just_beyond_its_threshold() => Assert.True(Fires(With(Threshold.Measure, Threshold.Beyond)));

    [Fact]
    public void Does_not_fire_just_short_of_its_threshold() => Assert.False(Fires(With(Threshold.Measure, Threshold.Short)));

    [Fact]
    public void Does_not_fire_while_one_of_them_is_not_measured() =>
        Assert.All(Readings, reading => Assert.False(Fires([.. Readings.Where(r => r != reading)]), $"fires without {reading.Measure.Value}"));

    [Fact]
    public void Does_not_fire_while_one_that_is_out_is_in_range() =>
        Assert.All(Findings.Where(f => f.IsOut), f => Assert.False(Fires(With(f.Measure.Id.Value, Middle(f))), $"fires with {f.Measure.Id.Value} in range"));

    [Fact]
    public void Does_not_fire_while_one_that_is_to_be_in_range_is_out() =>
        Assert.All(Findings.Where(f => !f.IsOut), f => Assert.False(Fires(With(f.Measure.Id.Value, FarOut(f))), $"fires with {f.Measure.Id.Value} out"));

    /// <summary>A mean of five swings, or of more.</summary>
    protected static MeasuredValue Read(string measure, double value, int swings = 5) => HouseBook.Value(measure, value, swings);

    private IReadOnlyList<Finding> Findings => HouseBook.Context(Lesson(Readings)).Findings;

    private IReadOnlyList<MeasuredValue> With(string measure, double value) =>
        [.. Readings.Select(r => r.Measure.Value == measure ? r with { Value = new Quantity(value, r.Value.Unit) } : r)];

    private bool Fires(IReadOnlyList<MeasuredValue> readings) =>
        HouseBook.Compiled.Fire(HouseBook.Context(Lesson(readings))).Any(p => p.Id.Value == Pattern);

    private LessonFacts Lesson(IReadOnlyList<MeasuredValue> readings)
    {
        var lesson = HouseBook.Lesson(Club, readings);
        return SpeedGoal is { } goal ? lesson with { Student = lesson.Student with { ClubSpeedGoal = new Quantity(goal, Unit.MetrePerSecond) } } : lesson;
    }

    private static double Middle(Finding finding) =>
        Math.Round(((finding.Range!.Low ?? (finding.Range.High - finding.Step)) + (finding.Range.High ?? (finding.Range.Low + finding.Step)))!.Value / 2, 3);

    private static double FarOut(Finding finding) => Math.Round((finding.Range!.High ?? finding.Range.Low)!.Value + (2 * finding.Step!.Value), 3);
}
