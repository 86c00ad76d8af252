using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Groups;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>Books a lesson for one or more students.</summary>
public sealed class NewModel(NewBookingDeeds deeds, NewBookingChoices choices, NewBookingPeople people, PracticeClock clock, INewIds ids) : OfficePage
{
    /// <summary>Made when the page is opened: the same form sent twice is one booking.</summary>
    [BindProperty]
    public Guid Id { get; set; }

    [BindProperty]
    public WhereInput Input { get; set; } = new();

    [BindProperty]
    public RepeatInput Repeat { get; set; } = new();

    [BindProperty]
    public Guid? OfferingId { get; set; }

    [BindProperty]
    public List<Guid> Students { get; set; } = [];

    [BindProperty]
    public string? Text { get; set; }

    [BindProperty]
    public string? Note { get; set; }

    internal BookingChoices Choices { get; private set; } = null!;

    /// <summary>Those picked already.</summary>
    internal IReadOnlyList<Student> Picked { get; private set; } = [];

    internal StudentList? Found { get; private set; }

    internal IReadOnlyList<GroupRow> Groups { get; private set; } = [];

    /// <summary>Free times of what is picked, by day; null while nobody asked.</summary>
    internal IReadOnlyList<IGrouping<LocalDate, FreeTime>>? Free { get; private set; }

    public async Task<IActionResult> OnGetAsync(string? day, string? at, Guid? coach, Guid? student)
    {
        Id = ids.Next();
        Input = new WhereInput { Day = DayEntry.Text(DayEntry.Read(day) ?? await clock.Today()), At = at, CoachId = coach ?? Actor.Account?.Value };
        if (student is { } one && one != Guid.Empty) Students = [one];
        await Load();
        if (Choices.Offerings is [var only]) OfferingId = only.Id.Value;
        return Page();
    }

    /// <summary>Looks for students by a text; those ticked stay.</summary>
    [AsksOnly]
    public async Task<IActionResult> OnPostFindAsync()
    {
        await Load();
        Found = await people.Matching(Text);
        return Request.Headers.ContainsKey("X-Part") ? Partial("_Found", this) : Page();
    }

    /// <summary>Ticks everybody of a group.</summary>
    [AsksOnly]
    public async Task<IActionResult> OnPostGroupAsync(Guid group)
    {
        Students = [.. Students.Concat((await people.In(group)).Select(s => s.Value)).Distinct()];
        await Load();
        return Page();
    }

    /// <summary>Looks for free times of the offering over four weeks, with the coach picked or with anybody who gives it.</summary>
    [AsksOnly]
    public async Task<IActionResult> OnPostTimesAsync(bool anybody)
    {
        var found = await choices.Free(OfferingId, anybody ? null : Input, DayEntry.Read(Input.Day), Students.Where(s => s != Guid.Empty).Select(s => (StudentId?)StudentId.From(s)).FirstOrDefault(), Actor);
        if (!found.TryGet(out var free)) return await Again(found.Refusals);
        // Of anybody each time is shown once, with the first who is free; the coach can still be changed in the form.
        Free = [.. (anybody ? free.DistinctBy(f => f.LocalStart) : free).GroupBy(f => f.LocalStart.Date)];
        await Load();
        return Page();
    }

    /// <summary>Takes one of them over into the form.</summary>
    [AsksOnly]
    public async Task<IActionResult> OnPostPickAsync(string? time)
    {
        Input.Take(time);
        ModelState.Clear();
        await Load();
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var time = Input.Time();
        if (!time.TryGet(out var when)) return await Again(time.Refusals);
        var booked = await deeds.Do(
            new BookingForm
            {
                Id = Id == Guid.Empty ? null : BookingId.From(Id),
                OfferingId = Domain.Bookings.OfferingId.From(OfferingId is { } offering && offering != Guid.Empty ? offering : ids.Next()),
                CoachId = AccountId.From(Input.CoachId is { } coach && coach != Guid.Empty ? coach : ids.Next()),
                PlaceId = PlaceId.From(Input.PlaceId is { } place && place != Guid.Empty ? place : ids.Next()),
                ResourceId = Input.ResourceId is { } bay && bay != Guid.Empty ? ResourceId.From(bay) : null,
                Start = when.Start,
                Minutes = when.Minutes,
                Students = [.. Students.Where(s => s != Guid.Empty).Distinct().Select(StudentId.From)],
                Note = Note ?? "",
            },
            Repeat,
            Actor);
        return booked.TryGet(out var done) ? Done(CalendarLinks.To(done.First), done.Said, $"{CalendarLinks.To(done.First)}?handler={(string.IsNullOrEmpty(Repeat.Every) ? "cancel&version=1" : "rest")}&by=practice") : await Again(booked.Refusals);
    }

    private async Task<IActionResult> Again(IReadOnlyList<Refusal> refusals)
    {
        await Load();
        return Refuse(refusals, "");
    }

    private async Task Load()
    {
        Choices = await choices.Now();
        Groups = await people.Groups();
        Picked = await people.Of([.. Students.Where(s => s != Guid.Empty).Distinct().Select(StudentId.From)]);
    }
}
