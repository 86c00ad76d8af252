using System.Text;
using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Reading.Lessons;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Plans;

/// <summary>What stands against a plan going, or going on, to a student. Safety comes first.</summary>
public sealed class ApprovalCheck(OfficeDb db, PlanBooks books, PracticeClock clock)
{
    private static readonly CompiledQuery<StudentId, Guid> OpenReports = new((db, student) => db.CheckIns.Where(c => c.StudentId == student && c.Pain && c.SeenAt == null).Select(c => c.Id).Take(1));

    /// <summary>Everything that stands against approving; empty when nothing does.</summary>
    public async Task<IReadOnlyList<Refusal>> Of(Plan plan, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return await Of(plan, await StudentOf(plan, stop), stop);
    }

    /// <summary>The same, for a student just read.</summary>
    public async Task<IReadOnlyList<Refusal>> Of(Plan plan, Student student, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(student);
        var against = new List<Refusal>();
        if (plan.Stages.Count == 0) against.Add(new("plan-empty", "This draft asks for no work, so there is nothing to send. Take the readings it names, or throw it away."));
        if (student.ArchivedAt is not null) against.Add(new("student-archived", $"{student.FullName} is archived; restore the record first."));
        if (student.BirthDate is { } born && Ages.IsMinor(born, await clock.Today(stop)) && student.Guardian is null)
            against.Add(new("guardian-needed", $"{student.FullName} is under 18: add the guardian first, the plan goes there."));
        against.AddRange(await Body(plan, student, stop));
        return against;
    }

    /// <summary>What the body says against it: an open pain report, or a limit the draft did not know.</summary>
    public async Task<IReadOnlyList<Refusal>> Body(Plan plan, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return await Body(plan, await StudentOf(plan, stop), stop);
    }

    private async Task<IReadOnlyList<Refusal>> Body(Plan plan, Student student, CancellationToken stop)
    {
        var against = new List<Refusal>();
        if (await OpenReports.Rows(db, plan.StudentId, stop) is not [])
            against.Add(new("pain-report-open", "There is a pain report nobody has dealt with. Talk to the student, note it as seen, then go on."));
        if (await UnknownLimit(plan, student, stop) is { } region)
            against.Add(new("limits-changed", $"A limit ({Terms.Of(region)}) was recorded after this plan was drafted. Draft again, so that drills loading it are left out."));
        return against;
    }

    private Task<Student> StudentOf(Plan plan, CancellationToken stop) => db.Students.AsNoTracking().SingleAsync(s => s.Id == plan.StudentId, stop);

    private async Task<Region?> UnknownLimit(Plan plan, Student student, CancellationToken stop)
    {
        if (student.Limits.All(l => l.Status == LimitStatus.Cleared)) return null;
        var input = await db.StoredDrafts.Where(d => d.Id == plan.DraftId).Select(d => d.InputJson).SingleAsync(stop);
        var known = LessonReader.Read("input.json", Encoding.UTF8.GetBytes(input), await books.Of(plan.DraftId, stop)).Value.Student.Limits;
        var news = student.Limits.FirstOrDefault(l => l.Status != LimitStatus.Cleared && !known.Any(k => k.Region == l.Region && k.Status <= l.Status));
        return news?.Region;
    }
}
