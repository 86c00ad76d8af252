using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>From a posted form to a check-in. A pain report is never refused: what is unreadable in it falls back to what is safe.</summary>
internal static class CheckInCheck
{
    private const int DaysBack = 31;
    private const int MostMinutes = 600;
    private const int LongestComment = 1000;

    /// <summary>Pain, or a sign of an emergency.</summary>
    public static bool IsPain(CheckInForm form) => form.Pain || form.PainRegion is not null || form.Signs.Count > 0;

    /// <summary>Everything that is wrong; empty for a pain report.</summary>
    public static IReadOnlyList<Refusal> Of(CheckInForm form, LocalDate today) => IsPain(form) ? [] : [.. Wrong(form, today)];

    /// <summary>The check-in as it is kept.</summary>
    public static CheckIn Make(CheckInForm form, Plan plan, Instant now, LocalDate today)
    {
        var stage = form.CountReached ? StageOf(form, plan) : null;
        return new CheckIn
        {
            Id = form.Id,
            PlanId = plan.Id,
            StudentId = plan.StudentId,
            At = now,
            PracticedOn = form.PracticedOn is { } day && day <= today && day >= today.PlusDays(-DaysBack) ? day : today,
            Minutes = Math.Clamp(form.Minutes ?? 0, 0, MostMinutes),
            RepetitionsPercent = form.RepetitionsPercent is { } percent ? Math.Clamp(percent, 0, 100) : null,
            CountReached = form.CountReached,
            StageId = stage?.Id,
            Pain = IsPain(form),
            PainRegion = form.PainRegion,
            Emergency = form.Signs.Count > 0,
            Comment = form.Comment.Trim() is { Length: > LongestComment } longer ? longer[..LongestComment] : form.Comment.Trim(),
        };
    }

    private static IEnumerable<Refusal> Wrong(CheckInForm form, LocalDate today)
    {
        if (form.Id == Guid.Empty) yield return new("form-id", "Open the page again and fill in the form there.", nameof(form.Id));
        if (form.PracticedOn > today || form.PracticedOn < today.PlusDays(-DaysBack))
            yield return new("practice-day", "Give the day you practised: today or up to 31 days back.", nameof(form.PracticedOn));
        if (form.Minutes is null or < 1 or > MostMinutes) yield return new("practice-minutes", "Give the minutes you practised, between 1 and 600.", nameof(form.Minutes));
        if (form.RepetitionsPercent is < 0 or > 100) yield return new("practice-share", "The share of the repetitions lies between 0 and 100 percent.", nameof(form.RepetitionsPercent));
        if (form.Comment.Length > LongestComment) yield return new("comment-too-long", "A comment holds up to 1000 characters.", nameof(form.Comment));
    }

    // When two ladders count at once and none was named, nobody knows which was meant: the coach opens the gate then.
    private static PlanStage? StageOf(CheckInForm form, Plan plan)
    {
        var counting = plan.Stages.Where(s => s.Status == StageStatus.Current && s.Gate.Kind == GateKind.Count).ToList();
        return form.StageId is { } id ? counting.FirstOrDefault(s => s.Id == id) : counting.Count == 1 ? counting[0] : null;
    }
}
