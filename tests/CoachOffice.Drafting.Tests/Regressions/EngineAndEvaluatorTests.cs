using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Tests.Regressions;

/// <summary>Shapes of a pattern that no shipped one has and that the rule engine and the plain evaluator once judged differently.</summary>
public sealed class EngineAndEvaluatorTests
{
    private static readonly MeasureId Tilt = MeasureId.From("impact-spine-tilt");
    private static readonly OutCondition Steep = new(MeasureId.From("shaft-over-plane"), Side.High);
    private static readonly StateCondition TiltNotInRange = new(Tilt, MeasureState.NotInRange);

    [Fact]
    public void A_pattern_that_asks_for_no_fault_never_fires() => Alike(false, HouseBook.Lesson(Club.Driver), when: [TiltNotInRange]);

    [Fact]
    public void Nor_one_that_only_asks_for_readings() =>
        Alike(false, HouseBook.Lesson(Club.Driver, HouseBook.Value("impact-spine-tilt", 24)), when: [new StateCondition(Tilt, MeasureState.Measured)]);

    [Fact]
    public void A_reading_nobody_took_rules_nothing_out_inside_any_of_either() =>
        Alike(true, HouseBook.Lesson(Club.Driver, HouseBook.Value("shaft-over-plane", 16)), [Steep], new AnyOfCondition([TiltNotInRange, new OutCondition(MeasureId.From("club-path"), Side.Low)]));

    [Fact]
    public void A_reading_out_of_range_does() =>
        Alike(false, HouseBook.Lesson(Club.Driver, HouseBook.Value("shaft-over-plane", 16), HouseBook.Value("impact-spine-tilt", 8)), [Steep], new AnyOfCondition([TiltNotInRange, new OutCondition(MeasureId.From("club-path"), Side.Low)]));

    private static void Alike(bool fires, LessonFacts facts, IReadOnlyList<Condition> when, params IReadOnlyList<Condition> unless)
    {
        var pattern = HouseBook.Book.Patterns[0] with { Clubs = [], When = when, Needs = [], Unless = unless };
        var book = HouseBook.With([pattern]);
        var lesson = HouseBook.Context(facts);
        Assert.Equal(fires, PatternEvaluator.Evaluate(book, lesson).Single().Holds);
        Assert.Equal(fires, PatternNetwork.Compile(book).Fire(lesson).Count == 1);
    }
}
