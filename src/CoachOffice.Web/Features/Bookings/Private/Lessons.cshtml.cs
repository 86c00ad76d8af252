using CoachOffice.UseCases;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.UseCases.Bookings.Waiting;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>A student's own lessons: what is kept, what comes, what was, and what they wait for.</summary>
public sealed class LessonsModel(ReadVisitor visitor, ReadVisits visits, ReadWaiting waiting, LeaveWaiting leave, PracticeClock clock) : LessonsPage(visitor)
{
    public IReadOnlyList<VisitView> Visits { get; private set; } = [];

    public IReadOnlyList<WaitingView> Waiting { get; private set; } = [];

    public Instant Now => clock.Now;

    public Task OnGetAsync() => Look();

    public async Task<IActionResult> OnPostLeaveAsync(Guid waiting)
    {
        await Look();
        var left = await leave.Of(waiting, Pass);
        return left.Succeeded ? Done("/my-lessons", "You wait for it no longer.") : Refuse(left.Refusals);
    }

    private async Task Look()
    {
        await Greet();
        (Visits, Waiting) = (await visits.All(Pass), await waiting.Of(Pass));
    }
}
