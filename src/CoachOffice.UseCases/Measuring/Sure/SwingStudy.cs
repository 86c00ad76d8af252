using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Measuring.Sure;

/// <summary>Several swings of the same lesson, read with one instrument: how one swing scatters, reading included; in the measure's unit.</summary>
/// <param name="Instrument">With what.</param>
/// <param name="Lessons">How many lessons have more than one swing of it.</param>
/// <param name="Pairs">How many swings more than lessons: what the estimate rests on.</param>
/// <param name="Scatter">Within-lesson standard deviation (analysis of variance).</param>
public sealed record SwingStudy(Instrument Instrument, int Lessons, int Pairs, double Scatter)
{
    /// <summary>With so many pairs it may take the place of the rulebook's.</summary>
    public const int EnoughPairs = 10;

    /// <summary>True when it may.</summary>
    public bool IsEnough => Pairs >= EnoughPairs;

    internal static SwingStudy Of(Instrument instrument, IReadOnlyList<LessonScatter> lessons)
    {
        var pairs = lessons.Sum(l => l.Swings - 1);
        return new SwingStudy(instrument, lessons.Count, pairs, Math.Sqrt(lessons.Sum(l => l.Within) / pairs));
    }
}
