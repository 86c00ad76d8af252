using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Checks.Examples;

namespace CoachOffice.Drafting.Tests.Checks.Examples;

public sealed class SmallestLessonTests
{
    [Fact]
    public void From_every_worked_case_that_fires_no_reading_can_be_taken()
    {
        foreach (var one in HouseBook.Cases.Where(c => c.Fires))
        {
            var shows = ExampleOf.Fires(HouseBook.Book.Find(one.Pattern)!);
            var smallest = SmallestLesson.Of(HouseBook.Lesson(one), facts => shows(Drafter.Draft(HouseBook.Compiled, facts)));

            Assert.NotNull(smallest);
            Assert.All(smallest.Readings, reading => Assert.False(Shows(smallest, reading.Measure, shows), $"{one.Name}: {reading.Measure.Value} is not needed"));
        }
    }

    [Fact]
    public void A_lesson_that_does_not_show_it_has_no_smallest() => Assert.Null(SmallestLesson.Of(HouseBook.Lesson(Domain.Measuring.Club.Iron), _ => false));

    [Fact]
    public void An_example_is_a_lesson_the_draft_command_reads()
    {
        var anomaly = new BookUnderCheck().Pattern("one", "10", "when: [early.low, middle measured, early measured]", "root: early.low").Find(AnomalyKind.AlwaysTrue)[0];
        var book = new BookUnderCheck().Pattern("one", "10", "when: [early.low, middle measured, early measured]", "root: early.low").Load();

        var read = CoachOffice.Drafting.Reading.Lessons.LessonReader.Read("example.json", System.Text.Encoding.UTF8.GetBytes(anomaly.ExampleJson!), book.Book);

        Assert.Empty(read.Faults);
        Assert.Equal(anomaly.Example!.Readings, read.Value.Readings);
    }

    private static bool Shows(LessonFacts facts, Domain.Measuring.MeasureId without, Func<Domain.Plans.Drafts.Draft, bool> shows) =>
        shows(Drafter.Draft(HouseBook.Compiled, facts with { Readings = [.. facts.Readings.Where(r => r.Measure != without)] }));
}
