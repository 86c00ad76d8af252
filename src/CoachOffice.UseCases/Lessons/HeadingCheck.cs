using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using NodaTime;

namespace CoachOffice.UseCases.Lessons;

/// <summary>What has to hold of a lesson's day and club.</summary>
internal static class HeadingCheck
{
    private const int YearsBack = 20;

    /// <summary>What is wrong, or null.</summary>
    public static Refusal? Of(LessonHeading heading, LocalDate today)
    {
        if (heading.HeldOn > today) return new("lesson-day", "A lesson is recorded on its day or later; pick today or an earlier day.", nameof(heading.HeldOn));
        if (heading.HeldOn < today.PlusYears(-YearsBack)) return new("lesson-day", "That day lies more than 20 years back; check the year.", nameof(heading.HeldOn));
        return Enum.IsDefined(heading.Club) && Enum.IsDefined(heading.Kind) ? null : new("lesson-club", "Pick a club from the list.", nameof(heading.Club));
    }
}
