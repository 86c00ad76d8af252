using CoachOffice.Domain;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Lessons.Reviews;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Lessons.Reviews;

/// <summary>Remote reviews, the earliest promise first.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class QueueModel(ReviewQueue queue, OpenReview open, EndReview end, ListCoaches coaches, PracticeClock clock) : OfficePage
{
    private const int Most = 200;

    internal IReadOnlyList<ReviewRow> Waiting { get; private set; } = [];

    internal IReadOnlyList<ReviewRow> Ended { get; private set; } = [];

    internal IReadOnlyList<CoachName> Coaches { get; private set; } = [];

    internal DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    internal Instant Now => queue.Now;

    public Task OnGetAsync() => Load();

    /// <summary>Makes the lesson record and goes there.</summary>
    public async Task<IActionResult> OnPostOpenAsync(Guid id)
    {
        var opened = await open.For(Key(id), Actor);
        return opened.TryGet(out var lesson) ? LocalRedirect(OfficeLinks.To(lesson)) : await Again(opened.Refusals);
    }

    public async Task<IActionResult> OnPostAnsweredAsync(Guid id) => await Ends(await end.AsAnswered(Key(id), Actor), "It counts as answered.");

    public async Task<IActionResult> OnPostWithdrawnAsync(Guid id) => await Ends(await end.AsWithdrawn(Key(id), Actor), "It is out of the queue.");

    private static ReviewId Key(Guid id) => ReviewId.From(id);

    private async Task<IActionResult> Ends(Outcome<ReviewId> ended, string said) => ended.Succeeded ? Done("/reviews", said) : await Again(ended.Refusals);

    private async Task<IActionResult> Again(IReadOnlyList<Refusal> refusals)
    {
        await Load();
        return Refuse(refusals, "");
    }

    private async Task Load()
    {
        (Waiting, Ended) = (await queue.Waiting(Most), await queue.Ended(20));
        (Coaches, Zone) = (await coaches.Now(), await clock.Zone());
    }
}
