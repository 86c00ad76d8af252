using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Students;
using CoachOffice.Web.Shell;

namespace CoachOffice.Web.Features.Students;

/// <summary>Where a next step or a thing of the story leads, and what the button says.</summary>
internal static class StudentSteps
{
    public static (string Href, string Action) Of(NextStep step, StudentId student) => (step.Kind, step.Id) switch
    {
        (NextStepKind.SeePainReport, { } plan) => (OfficeLinks.To(PlanId.From(plan)), "See the report"),
        (NextStepKind.ApproveDraft, { } plan) => (OfficeLinks.To(PlanId.From(plan)), "Read the draft"),
        (NextStepKind.ResumePlan, { } plan) => (OfficeLinks.To(PlanId.From(plan)), "Open the plan"),
        (NextStepKind.TakeRetest, { } retest) => (OfficeLinks.Retest(retest), "Record the re-test"),
        (NextStepKind.AwaitRetest, { } retest) => (OfficeLinks.Retest(retest), "Open the re-test"),
        (NextStepKind.DraftFromLesson, { } lesson) => (OfficeLinks.To(LessonId.From(lesson)), "Open the lesson"),
        _ => (OfficeLinks.NewLesson(student), "Record a lesson"),
    };

    /// <summary>Null for what has no page of its own.</summary>
    public static string? Of(StoryItem item) => item.Kind switch
    {
        StoryKind.Lesson => OfficeLinks.To(LessonId.From(item.Id)),
        StoryKind.Plan => OfficeLinks.To(PlanId.From(item.Id)),
        StoryKind.Retest => OfficeLinks.Retest(item.Id),
        _ => null,
    };
}
