using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Reading;
using NodaTime;

namespace CoachOffice.Drafting.Patterns;

/// <summary>Runs the worked cases of a rulebook: each must come out as its author says.</summary>
public static class CaseRun
{
    // Patterns know readings only; of the student, age and stature alone move a range, so the cases take a grown-up of common stature.
    private static readonly LessonFacts Plain = new()
    {
        AsOf = new LocalDate(2000, 1, 1),
        Student = new StudentFacts { Hand = Hand.Right, Level = Level.Improver, BirthYear = 1965, MinutesPerWeek = 90, DaysPerWeek = 3, Room = Room.Range },
        Club = Club.Driver,
        Readings = [],
    };

    /// <summary>A fault at the place of each case that came out otherwise, in the order of the files; empty when all hold.</summary>
    public static IReadOnlyList<Fault> Failures(CompiledRulebook rulebook)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        return [.. rulebook.Loaded.Cases.Select(one => Run(rulebook, one)).OfType<Fault>().Order()];
    }

    private static Fault? Run(CompiledRulebook rulebook, PatternCase one)
    {
        var facts = Plain with { Club = one.Club, Readings = one.Readings, Student = Plain.Student with { ClubSpeedGoal = one.ClubSpeedGoal } };
        var lesson = new LessonContext(one.Club, LessonGrading.Grade(rulebook.Book, facts));
        var fires = rulebook.Fire(lesson).Any(pattern => pattern.Id == one.Pattern);
        if (fires == one.Fires) return null;
        return one.Failed(fires
            ? $"{one.Pattern.Value} fires here and should not: {one.Why} (in \"{one.Name}\")"
            : $"{one.Pattern.Value} does not fire here and should: {one.Why} (in \"{one.Name}\": {Hindrance(rulebook.Book, lesson, one.Pattern)})");
    }

    private static string Hindrance(Rulebook book, LessonContext lesson, PatternId id)
    {
        if (PatternEvaluator.Evaluate(book, lesson).FirstOrDefault(m => m.Pattern.Id == id) is not { } match) return "it does not speak of this club";
        return string.Join("; ", match.Against.Concat(match.Missing.Select(m => $"not measured: {m.Value}")));
    }
}
