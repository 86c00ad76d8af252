using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Whether a coach may put a drill into a plan by hand: the body has the last word, also over the coach.</summary>
internal static class BodyCheck
{
    private const int Teen = 13;

    /// <summary>What stands against it, or null.</summary>
    public static Refusal? Of(Drill drill, Stage stage, Student student, LocalDate today)
    {
        var current = student.Limits.Where(l => l.Status == LimitStatus.Current).Select(l => l.Region).ToHashSet();
        var past = student.Limits.Where(l => l.Status == LimitStatus.Past).Select(l => l.Region).ToHashSet();
        if (current.Count > 0 && stage > Stage.Rehearse) return Withheld("With a limit of today there is rehearsal only. For anything about the body the student may see a licensed professional.");
        if (drill.Loads.Any(l => current.Contains(l.Region) || (l.MoreThanSwing && past.Contains(l.Region))))
            return Withheld($"'{drill.Name}' loads a region with a recorded limit; pick another drill. For anything about the body the student may see a licensed professional.");
        if (student.BirthDate is not { } born) return null;
        var age = Ages.On(born, today);
        return age < (drill.FromAge ?? 0) || (age < Teen && drill.Loads.Any(l => l.MoreThanSwing)) ? Withheld($"'{drill.Name}' is not for this age; pick another drill.") : null;
    }

    private static Refusal Withheld(string sentence) => new("drill-withheld", sentence, "Instead");
}
