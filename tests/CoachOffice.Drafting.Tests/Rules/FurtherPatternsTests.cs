using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Tests.Properties;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Rules;

/// <summary>The patterns from precedence 80 on came later. They fill gaps and never take a finding, or a root, from the ones before them.</summary>
public sealed class FurtherPatternsTests
{
    private const int FirstOfTheFurther = 80;

    private static readonly CompiledRulebook Before = Without();

    public static TheoryData<string, string> Cases => [.. HouseBook.Cases.Select(c => (c.Pattern.Value, c.Name))];

    [Theory]
    [MemberData(nameof(Cases))]
    public void In_no_worked_case_do_they_take_a_finding_away(string pattern, string name) =>
        Hold(HouseBook.Lesson(HouseBook.Cases.Single(c => c.Pattern.Value == pattern && c.Name == name)));

    [Fact]
    public void Nor_in_any_lesson_nobody_gave() => RandomLessons.One.Sample(Hold, iter: 1000);

    private static void Hold(LessonFacts facts)
    {
        var (before, after) = (Drafter.Draft(Before, facts), Drafter.Draft(HouseBook.Compiled, facts));
        if (after.Causes.All(c => IsBefore(c.Pattern))) Assert.Equal(Work(before), Work(after));
        Assert.Equal(before.Causes.Select(Line), after.Causes.Where(c => IsBefore(c.Pattern)).Select(Line));

        // What only a part of a sum explains may get a cause; what a cause explains stays that cause's.
        foreach (var explained in before.Parked.Where(p => p.Reason == ParkedReason.ExplainedBy && before.Causes.Any(c => c.Root == p.By)))
            Assert.Contains(explained, after.Parked);
        foreach (var root in before.Causes.Select(c => c.Root).Except(before.Parked.Where(p => p.Reason == ParkedReason.ExplainedBy).Select(p => p.Fault)))
            Assert.DoesNotContain(after.Parked, p => p.Fault == root && p.Reason == ParkedReason.ExplainedBy);
    }

    /// <summary>All of a draft but what to measure next, the trace, and the book's own name.</summary>
    private static string Work(Draft draft) => DraftJson.Text(draft with { Rulebook = new DraftRulebook("", ""), MeasureNext = [], Trace = [] });

    private static string Line(DraftCause cause) => $"{cause.Pattern}: {cause.Root} explains {string.Join(' ', cause.Explains)}";

    private static bool IsBefore(string pattern) => HouseBook.Book.Find(PatternId.From(pattern))!.Precedence < FirstOfTheFurther;

    private static CompiledRulebook Without()
    {
        var book = HouseBook.Book;
        var before = new Rulebook
        {
            Name = book.Name,
            Measures = book.Measures,
            Ranges = book.Ranges,
            Adjustments = book.Adjustments,
            Patterns = [.. book.Patterns.Where(p => p.Precedence < FirstOfTheFurther)],
            TrainAfter = book.TrainAfter,
            Goals = book.Goals,
            Drills = book.Drills,
            Progressions = book.Progressions,
            Cautions = book.Cautions,
            Dosage = book.Dosage,
        };
        return CompiledRulebook.Compile(new LoadedRulebook(before, RulebookText.Of([]), new string('0', 64), []));
    }
}
