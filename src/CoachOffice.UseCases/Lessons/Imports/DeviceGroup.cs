using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>The swings of one day with one club, graded as a lesson would be.</summary>
/// <param name="Day">The day.</param>
/// <param name="Club">The club.</param>
/// <param name="Swings">How many.</param>
/// <param name="Findings">One a measure.</param>
/// <param name="There">Lessons of that day and club that could take them up, newest first.</param>
public sealed record DeviceGroup(LocalDate Day, Club Club, int Swings, IReadOnlyList<Finding> Findings, IReadOnlyList<LessonId> There)
{
    /// <summary>By which the form names it.</summary>
    public string Key => KeyOf(Day, Club);

    /// <summary>The same for any day and club, e.g. <c>2026-05-04.driver</c>.</summary>
    public static string KeyOf(LocalDate day, Club club) => $"{NodaTime.Text.LocalDatePattern.Iso.Format(day)}.{Terms.Of(club)}";
}
