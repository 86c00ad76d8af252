using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using NodaTime;

namespace CoachOffice.UseCases.Students;

/// <summary>What comes next, as a desk hand would say it: safety, then what waits for the coach, then the calendar, then the next lesson.</summary>
internal static class NextSteps
{
    public static NextStep After(HistoryFacts facts, LocalDate today) =>
        Pain(facts) ?? Draft(facts) ?? DueRetest(facts, today) ?? Hold(facts) ?? LaterRetest(facts) ?? Undrafted(facts)
        ?? new NextStep(NextStepKind.RecordLesson, facts.Lessons.Count == 0 ? "Record the first lesson." : "Record the next lesson.");

    private static NextStep? Pain(HistoryFacts facts) =>
        facts.CheckIns.FirstOrDefault(c => (c.Pain || c.Emergency) && c.SeenAt is null) is { } report
            ? new(NextStepKind.SeePainReport, "Pain was reported: speak with the student before anything else.", report.PlanId.Value, report.PracticedOn)
            : null;

    private static NextStep? Draft(HistoryFacts facts) =>
        facts.Plans.FirstOrDefault(p => p.Status == PlanStatus.Draft) is { } plan
            ? new(NextStepKind.ApproveDraft, "A draft waits for you: read it, change it, approve it.", plan.Id.Value)
            : null;

    private static NextStep? DueRetest(HistoryFacts facts, LocalDate today) =>
        Open(facts).FirstOrDefault(r => r.DueOn <= today) is { } due
            ? new(NextStepKind.TakeRetest, due.IsSecondLook ? "The second look is due." : "A re-test is due.", due.Id, due.DueOn)
            : null;

    private static NextStep? Hold(HistoryFacts facts) =>
        facts.Plans.FirstOrDefault(p => p.Status == PlanStatus.OnHold) is { } held
            ? new(NextStepKind.ResumePlan, "The plan is on hold: resume it when the student is ready.", held.Id.Value)
            : null;

    private static NextStep? LaterRetest(HistoryFacts facts) =>
        Open(facts).FirstOrDefault() is { } later
            ? new(NextStepKind.AwaitRetest, "The student practises until the re-test.", later.Id, later.DueOn)
            : null;

    private static NextStep? Undrafted(HistoryFacts facts) =>
        facts.Lessons is [{ Readings: > 0 } last, ..] && facts.Plans.All(p => p.LessonId != last.Id)
            ? new(NextStepKind.DraftFromLesson, "The last lesson has readings and no plan yet: draft one.", last.Id.Value, last.HeldOn)
            : null;

    private static IEnumerable<Retest> Open(HistoryFacts facts)
    {
        var active = facts.Plans.Where(p => p.Status == PlanStatus.Active).Select(p => p.Id).ToHashSet();
        return facts.Retests.Where(r => r.Status is RetestStatus.Ready or RetestStatus.InProgress && active.Contains(r.PlanId)).OrderBy(r => r.DueOn);
    }
}
