using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Words;

namespace CoachOffice.Drafting;

/// <summary>What every step of one draft has on the table: the rulebook, the lesson's facts, its graded findings, and the log of the reasoning.</summary>
/// <param name="Book">The rulebook.</param>
/// <param name="Facts">Student, club, readings.</param>
/// <param name="Graded">Every finding as graded, by row.</param>
/// <param name="Lesson">The graded findings as patterns see them.</param>
/// <param name="Trace">Grows as the draft is made.</param>
internal sealed record LessonAtHand(Rulebook Book, LessonFacts Facts, IReadOnlyList<Finding> Graded, LessonContext Lesson, TraceLog Trace)
{
    /// <summary>A lesson, graded.</summary>
    public static LessonAtHand Of(Rulebook book, LessonFacts facts)
    {
        var graded = LessonGrading.Grade(book, facts);
        return new LessonAtHand(book, facts, graded, new LessonContext(facts.Club, graded), new TraceLog());
    }

    /// <summary>The finding behind a fault that is out; asking for another is a defect.</summary>
    public Finding Out(FaultId fault) => Lesson.Out(fault) ?? throw new InvalidOperationException($"'{fault}' is not out in this lesson.");
}
