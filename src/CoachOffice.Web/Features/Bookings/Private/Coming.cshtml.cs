using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>One button: "I am coming". Opening the page changes nothing.</summary>
public sealed class ComingModel(ReadVisitor visitor, ReadVisits visits, SayComing coming) : LessonsPage(visitor)
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    public VisitView Visit { get; private set; } = null!;

    private BookingId Booking => BookingId.From(Id);

    public async Task<IActionResult> OnGetAsync() => await Look() ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync()
    {
        if (!await Look()) return NotFound();
        var said = await coming.To(Booking, Pass);
        return said.Succeeded ? Done($"{OfficeLinks.MyLesson(Booking)}/coming") : Refuse(said.Refusals);
    }

    private async Task<bool> Look()
    {
        await Greet();
        if (await visits.Of(Booking, Pass) is not { } visit) return false;
        Visit = visit;
        return true;
    }
}
