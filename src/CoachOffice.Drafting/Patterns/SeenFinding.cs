using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Patterns;

/// <summary>A finding out of range as a fact for the rule engine, with the way back to its lesson. A class on purpose: the engine tells facts apart by reference.</summary>
public sealed class SeenFinding
{
    /// <summary>A finding of this lesson.</summary>
    public SeenFinding(LessonContext lesson, Finding finding)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(finding);
        (Lesson, Row, Side) = (lesson, finding.Measure.Row, finding.Side);
    }

    /// <summary>The lesson it is of.</summary>
    public LessonContext Lesson { get; }

    /// <summary>Row of the measure in the rulebook's table.</summary>
    public int Row { get; }

    /// <summary>The side it is out on.</summary>
    public Side Side { get; }
}
