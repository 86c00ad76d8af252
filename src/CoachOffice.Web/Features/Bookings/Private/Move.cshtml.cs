using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>A student moves a lesson of their own: a day, a time, then one button.</summary>
public sealed class MoveModel(ReadVisitor visitor, ReadVisits visits, ReadChoices choices, FindFreeTimes find, MoveVisit move) : LessonsPage(visitor)
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    [BindProperty(SupportsGet = true)]
    public string? From { get; set; }

    [BindProperty(SupportsGet = true)]
    public string? Day { get; set; }

    /// <summary>The picked time.</summary>
    [BindProperty(SupportsGet = true)]
    public string? To { get; set; }

    public VisitView Visit { get; private set; } = null!;

    internal DayTimes? Days { get; private set; }

    internal FreeTime? Picked { get; private set; }

    private BookingId Booking => BookingId.From(Id);

    public async Task<IActionResult> OnGetAsync() => await Look() ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync()
    {
        if (!await Look()) return NotFound();
        if (PickedTime.Read(To, Booking, Visit.OfferingId) is not { } form) return Refuse([new Refusal("time-unknown", "Pick a time from the list.")]);
        var moved = await move.To(form, Pass);
        if (moved.Succeeded) return Done(OfficeLinks.MyLesson(Booking), "Moved.");
        return await Look() ? Refuse(moved.Refusals) : NotFound();
    }

    private async Task<bool> Look()
    {
        await Greet();
        if (await visits.Of(Booking, Pass) is not { } visit) return false;
        Visit = visit;
        if (visit.MayMove) await Times();
        return true;
    }

    private async Task Times()
    {
        var picked = PickedTime.Read(To, Booking, Visit.OfferingId);
        var from = LocalDate.Min(LocalDate.Max(picked?.Start.Date ?? DayEntry.Read(From) ?? Visitor.Today, Visitor.Today), Visitor.LastDay);
        var until = LocalDate.Min(from.PlusDays(FreeTimesQuestion.MostDays - 1), Visitor.LastDay);
        var found = await find.For(new FreeTimesQuestion { OfferingId = Visit.OfferingId, From = from, Until = until, Student = Pass.StudentId, Moving = Booking }, Actor.Student);
        IReadOnlyList<FreeTime> times = found.TryGet(out var free) ? free : [];
        Picked = times.FirstOrDefault(t => PickedTime.Text(t) == To);
        var day = DayEntry.Read(Day) is { } wanted && times.Any(t => t.LocalStart.Date == wanted) ? wanted : (LocalDate?)null;
        Days = new DayTimes(this, times, day, from, until)
        {
            Address = $"{OfficeLinks.MyLesson(Booking)}/move?",
            Coaches = (await choices.All()).Where(c => c.Offering.Id == Visit.OfferingId).SelectMany(c => c.Coaches).ToDictionary(c => c.Id.Value, c => c.Name),
            Places = await choices.Places(),
        };
    }
}
