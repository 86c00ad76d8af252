using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>One button: cancel. What it costs is said before; opening the page changes nothing.</summary>
public sealed class CancelOneModel(ReadVisitor visitor, ReadVisits visits, CancelVisit cancel) : LessonsPage(visitor)
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    public VisitView Visit { get; private set; } = null!;

    private BookingId Booking => BookingId.From(Id);

    public async Task<IActionResult> OnGetAsync() => await Look() ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync(bool late)
    {
        if (!await Look()) return NotFound();
        var cancelled = await cancel.Of(Booking, late, Pass);
        if (cancelled.Succeeded) return Done("/my-lessons", "The lesson is cancelled.");
        return await Look() ? Refuse(cancelled.Refusals) : NotFound();
    }

    private async Task<bool> Look()
    {
        await Greet();
        if (await visits.Of(Booking, Pass) is not { } visit) return false;
        Visit = visit;
        return true;
    }
}
