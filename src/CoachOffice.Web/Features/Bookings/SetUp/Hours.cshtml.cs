using System.Text.Json;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Bookings.SetUp;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.SetUp;

/// <summary>A coach's hours and what differs from them. A coach sees and changes their own, an owner everybody's and the practice's.</summary>
[Authorize(Policy = OfficePolicies.Teach)]
public sealed class HoursModel(ReadHours read, ListCoaches coaches, ReadPlaces places, ReadSetUp setUp, PracticeClock clock) : OfficePage
{
    private const string Kept = "put-back";

    [BindProperty(SupportsGet = true)]
    public Guid? Coach { get; set; }

    [BindProperty]
    public HoursFields Input { get; set; } = new();

    [BindProperty]
    public ExceptionFields Except { get; set; } = new();

    public HoursView View { get; private set; } = new([], [], []);

    public IReadOnlyList<CoachName> Coaches { get; private set; } = [];

    public PlacesView Places { get; private set; } = new([], []);

    public SetUpState SetUp { get; private set; } = new(true, true, true);

    public LocalDate Today { get; private set; }

    public bool MayOwn => Actor.MayOwn;

    public AccountId Of => Coach is { } id && MayOwn ? AccountId.From(id) : Actor.Account!.Value;

    public string Name => Coaches.FirstOrDefault(c => c.Id == Of)?.Name ?? "";

    private string Here => MayOwn ? $"/settings/hours?coach={Of.Value}" : "/settings/hours?";

    public async Task<IActionResult> OnGetAsync() => await Look() ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync([FromServices] AddHours add)
    {
        var form = Input.Read(Of);
        if (!form.TryGet(out var hours)) return await Refused(form.Refusals, "Input.");
        var added = await add.As(hours, Actor);
        return added.Succeeded ? Done(Here, "The hours are added.") : await Refused(added.Refusals, "Input.");
    }

    public async Task<IActionResult> OnPostEndAsync(Guid hours, string? last, [FromServices] EndHours end)
    {
        if (DayEntry.Read(last) is not { } day) return await Refused([DayEntry.Refusal("last")], "");
        var ended = await end.After(hours, day, Actor);
        if (!ended.TryGet(out var done)) return await Refused(ended.Refusals, "");
        if (!done.IsGone) return Done(Here, $"They end with {DayEntry.Said(day)}.{Outside(done.NowOutside)}", $"{Here}&handler=GoOn&hours={hours}&last={(done.Before.ValidUntil is { } before ? DayEntry.Text(before) : "")}");
        TempData[Kept] = JsonSerializer.Serialize(HoursFields.Of(done.Before));
        return Done(Here, $"The hours are taken out.{Outside(done.NowOutside)}", $"{Here}&handler=PutBackHours");
    }

    public async Task<IActionResult> OnPostGoOnAsync(Guid hours, string? last, [FromServices] EndHours end)
    {
        var on = await end.After(hours, DayEntry.Read(last), Actor);
        return on.Succeeded ? Done(Here, "They hold as before.") : await Refused(on.Refusals, "");
    }

    public async Task<IActionResult> OnPostPutBackHoursAsync([FromServices] AddHours add)
    {
        Input = Again<HoursFields>() ?? new();
        return await OnPostAsync(add);
    }

    public async Task<IActionResult> OnPostExceptAsync([FromServices] AddException add)
    {
        var form = Except.Read(Of);
        if (!form.TryGet(out var exception)) return await Refused(form.Refusals, "Except.");
        var added = await add.As(exception, Actor);
        return added.TryGet(out var outside) ? Done($"{Here}#exceptions", $"Kept.{Outside(outside)}") : await Refused(added.Refusals, "Except.");
    }

    public async Task<IActionResult> OnPostDropAsync(Guid exception, [FromServices] DropException drop)
    {
        var dropped = await drop.Of(exception, Actor);
        if (!dropped.TryGet(out var before)) return await Refused(dropped.Refusals, "");
        TempData[Kept] = JsonSerializer.Serialize(ExceptionFields.Of(before));
        return Done($"{Here}#exceptions", "Taken out; the weekly hours hold.", $"{Here}&handler=PutBack");
    }

    public async Task<IActionResult> OnPostPutBackAsync([FromServices] AddException add)
    {
        Except = Again<ExceptionFields>() ?? new();
        return await OnPostExceptAsync(add);
    }

    private T? Again<T>()
        where T : class => TempData[Kept] is string kept ? JsonSerializer.Deserialize<T>(kept) : null;

    private static string Outside(int bookings) => bookings switch
    {
        0 => "",
        1 => " One booked lesson lies outside the hours now; it stays booked, see below.",
        _ => $" {bookings} booked lessons lie outside the hours now; they stay booked, see below.",
    };

    private async Task<IActionResult> Refused(IReadOnlyList<Refusal> refusals, string prefix) => await Look() ? Refuse(refusals, prefix) : NotFound();

    private async Task<bool> Look()
    {
        (Coaches, Places, SetUp, Today) = (await coaches.Now(closedToo: true), await places.All(), await setUp.Now(), await clock.Today());
        if (Coaches.All(c => c.Id != Of)) return false;
        View = await read.Of(Of);
        Input.ValidFrom ??= DayEntry.Text(Today);
        return true;
    }
}
