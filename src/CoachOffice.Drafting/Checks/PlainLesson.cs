using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Drafting.Checks;

/// <summary>Lessons of a student who hinders nothing: grown up, of common stature, with all kit, time and no limit. Only the readings matter then.</summary>
internal static class PlainLesson
{
    /// <summary>An age at which nothing is adjusted for youth.</summary>
    public const int GrownUp = 35;

    private const int Year = 2000;

    /// <summary>A lesson with these readings.</summary>
    public static LessonFacts Of(Rulebook book, Club club, int age, IReadOnlyList<MeasuredValue> readings, Level level = Level.Improver) => new()
    {
        AsOf = new LocalDate(Year, 1, 1),
        Club = club,
        Readings = readings,
        Student = new StudentFacts
        {
            Hand = Hand.Right,
            Level = level,
            BirthYear = Year - age - 1,
            MinutesPerWeek = 180,
            DaysPerWeek = 3,
            Room = Room.Range,
            Kit = Enum.GetValues<Kit>(),
            ClubSpeedGoal = Goal(book),
        },
    };

    private static Quantity? Goal(Rulebook book) =>
        book.Find(NamedMeasures.ClubSpeed) is { Plausible: { Low: { } low, High: { } high } } speed ? new Quantity(Math.Round((low + high) / 2), speed.Unit) : null;
}
