using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.UseCases.Bookings.Waiting;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>A student picks an offering, a coach or any, a day and a free time; or joins a group; or waits.</summary>
public sealed class BookModel(ReadVisitor visitor, ReadChoices choices, FindFreeTimes find, INewIds ids) : LessonsPage(visitor)
{
    [BindProperty(SupportsGet = true)]
    public Guid? Offering { get; set; }

    [BindProperty(SupportsGet = true)]
    public Guid? Coach { get; set; }

    [BindProperty(SupportsGet = true)]
    public string? From { get; set; }

    [BindProperty(SupportsGet = true)]
    public string? Day { get; set; }

    /// <summary>Days of a refused wish, as typed.</summary>
    [BindProperty]
    public string? First { get; set; }

    [BindProperty]
    public string? Last { get; set; }

    /// <summary>Made when the page is opened: the same form sent twice counts once.</summary>
    public Guid FormId { get; } = ids.Next();

    public IReadOnlyList<ChoiceView> Choices { get; private set; } = [];

    public ChoiceView? Choice { get; private set; }

    public IReadOnlyList<JoinableLesson> Lessons { get; private set; } = [];

    public IReadOnlyDictionary<PlaceId, string> Places { get; private set; } = new Dictionary<PlaceId, string>();

    internal DayTimes? Days { get; private set; }

    private AccountId? WithCoach => Coach is { } id ? AccountId.From(id) : null;

    public async Task<IActionResult> OnGetAsync() => await Look() ? Page() : NotFound();

    public async Task<IActionResult> OnPostHoldAsync(Guid id, string? time, [FromServices] HoldVisit hold)
    {
        if (Offering is not { } offering || PickedTime.Read(time, BookingId.From(id), OfferingId.From(offering)) is not { } form) return await Look() ? Refuse([new Refusal("time-unknown", "Pick a time from the list.")]) : NotFound();
        Day = DayEntry.Text(form.Start.Date);
        var held = await hold.For(form, Pass);
        if (!await Look()) return NotFound();
        return held.TryGet(out var booking) ? Done(OfficeLinks.MyLesson(booking)) : Refuse(held.Refusals);
    }

    public async Task<IActionResult> OnPostJoinAsync(Guid lesson, [FromServices] HoldSeat hold)
    {
        var held = await hold.In(BookingId.From(lesson), Pass);
        if (!await Look()) return NotFound();
        return held.TryGet(out var booking) ? Done(OfficeLinks.MyLesson(booking)) : Refuse(held.Refusals);
    }

    public async Task<IActionResult> OnPostWaitAsync(Guid id, Guid? lesson, [FromServices] JoinWaiting join)
    {
        if (!await Look() || Choice is null) return NotFound();
        if (lesson is null && (DayEntry.Read(First) is null || DayEntry.Read(Last) is null)) return Refuse([DayEntry.Refusal(DayEntry.Read(First) is null ? "first" : "last")]);
        var joined = await join.For(new WaitingForm
        {
            Id = id,
            OfferingId = Choice.Offering.Id,
            CoachId = WithCoach,
            BookingId = lesson is { } full ? BookingId.From(full) : null,
            FirstDay = DayEntry.Read(First) ?? Visitor.Today,
            LastDay = DayEntry.Read(Last) ?? Visitor.Today,
        }, Pass);
        return joined.Succeeded ? Done("/my-lessons", "You are on the waiting list. You get a message when something becomes free.") : Refuse(joined.Refusals);
    }

    private async Task<bool> Look()
    {
        await Greet();
        Choices = await choices.All();
        if (Offering is not { } offering) return true;
        Choice = Choices.FirstOrDefault(c => c.Offering.Id.Value == offering);
        if (Choice is null || (Coach is not null && Choice.Coaches.All(c => c.Id.Value != Coach))) return false;
        Places = await choices.Places();
        if (Choice.IsShared) Lessons = await choices.Lessons(Choice.Offering.Id, WithCoach, Pass);
        else await Times(Choice);
        return true;
    }

    private async Task Times(ChoiceView choice)
    {
        var from = LocalDate.Min(LocalDate.Max(DayEntry.Read(From) ?? Visitor.Today, Visitor.Today), Visitor.LastDay);
        var until = LocalDate.Min(from.PlusDays(FreeTimesQuestion.MostDays - 1), Visitor.LastDay);
        var found = await find.For(new FreeTimesQuestion { OfferingId = choice.Offering.Id, CoachId = WithCoach, From = from, Until = until, Student = Pass.StudentId }, Actor.Student);
        IReadOnlyList<FreeTime> times = found.TryGet(out var free) ? free : [];
        var day = DayEntry.Read(Day) is { } wanted && times.Any(t => t.LocalStart.Date == wanted) ? wanted : (LocalDate?)null;
        Days = new DayTimes(this, times, day, from, until)
        {
            Address = $"/my-lessons/book?offering={choice.Offering.Id.Value}{(Coach is { } coach ? $"&coach={coach}" : "")}",
            Coaches = choice.Coaches.ToDictionary(c => c.Id.Value, c => c.Name),
            Places = Places.Where(p => choice.Offering.Places.Contains(p.Key)).ToDictionary(),
        };
    }
}
