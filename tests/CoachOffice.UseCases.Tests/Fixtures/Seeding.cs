using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Fixtures;

/// <summary>Short cuts to a state, where the way there is not what is tested.</summary>
public static class Seeding
{
    public static Task<StudentId> Register(this TestOffice office, StudentDetails details) =>
        office.Must((RegisterStudent register) => register.From(details, office.Owner));

    /// <summary>A plan by hand for a student, active unless told otherwise.</summary>
    public static async Task<PlanId> GivePlan(this TestOffice office, StudentId student, PlanStatus status = PlanStatus.Active)
    {
        var ids = new SeededIds(student.GetHashCode());
        var id = default(PlanId?);
        await office.Change(async db =>
        {
            if (!await db.KeptRulebooks.AnyAsync(b => b.Sha256 == APlan.BookHash)) db.KeptRulebooks.Add(new KeptRulebook(APlan.BookHash, "no rules", office.Now));
            var lesson = Lesson.Start(LessonId.From(ids.Next()), student, office.Coach.Account!.Value, new LessonHeading(new LocalDate(2026, 3, 1), Club.Iron), office.Now);
            var draft = APlan.DraftOf(lesson, ids);
            var plan = APlan.From(draft, ids);
            if (status != PlanStatus.Draft) plan.Become(PlanStatus.Active, StepOf(office, ids));
            if (status is not (PlanStatus.Draft or PlanStatus.Active)) plan.Become(status, StepOf(office, ids));
            db.AddRange(lesson, draft, plan);
            id = plan.Id;
        });
        return id!.Value;
    }

    /// <summary>An actor with a policy, from the accounts of the test practice.</summary>
    public static Actor ActorOf(this TestOffice office, Policy policy) => policy switch
    {
        Policy.Owner => office.Owner,
        Policy.Coach => office.Coach,
        _ => office.Desk,
    };

    private static PlanStep StepOf(TestOffice office, SeededIds ids) => new(ids.Next(), office.Now, office.Coach.Name, "in a test");
}
