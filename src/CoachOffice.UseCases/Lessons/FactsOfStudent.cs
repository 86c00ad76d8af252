using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Lessons;

/// <summary>What a draft needs to know of a student, without name or address.</summary>
public static class FactsOfStudent
{
    // Without a birth date the student counts as an adult for whom no rule of age holds (own judgement; a minor cannot be registered without one).
    private const int AssumedAge = 30;

    /// <summary>The facts as they are on a day.</summary>
    public static StudentFacts On(Student student, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(student);
        return new StudentFacts
        {
            Hand = student.Hand,
            Level = student.Level,
            BirthYear = student.BirthDate?.Year ?? day.Year - AssumedAge - 1,
            Goals = student.Goals,
            MinutesPerWeek = student.MinutesPerWeek,
            DaysPerWeek = student.DaysPerWeek,
            Kit = student.Kit,
            Room = student.Room,
            Limits = [.. student.Limits.Select(l => new BodyLimit(l.Region, l.Status))],
            ClubSpeedGoal = student.ClubSpeedGoalMetresPerSecond is { } goal ? new Quantity(goal, Unit.MetrePerSecond) : null,
            HeightCm = student.HeightCm,
        };
    }
}
