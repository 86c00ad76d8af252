using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.SetUp;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Bookings.SetUp;

[Authorize(Policy = OfficePolicies.Own)]
public sealed class PlaceModel(ReadPlaces read, ReadSetUp setUp, KeepPlace keep, ArchivePlace archive) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    [BindProperty]
    public PlaceFields Input { get; set; } = new();

    [BindProperty]
    public BayFields Bay { get; set; } = new();

    /// <summary>Minutes as typed, by the other place.</summary>
    [BindProperty]
    public Dictionary<Guid, string?> Ways { get; set; } = [];

    public PlacesView All { get; private set; } = new([], []);

    public PlaceView Shown { get; private set; } = null!;

    public SetUpState SetUp { get; private set; } = new(true, true, true);

    /// <summary>A refused name of a new bay stays as typed.</summary>
    public string? NewBay => Bay.Id is null ? Bay.Name : null;

    private PlaceId Place => PlaceId.From(Id);

    private string Here => OfficeLinks.To(Place);

    public async Task<IActionResult> OnGetAsync() => await Look() ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync()
    {
        var kept = await keep.As(new PlaceForm { Id = Place, Version = Input.Version, Name = Input.Name ?? "", Address = Input.Address ?? "" }, Actor);
        if (kept.Succeeded) return Done(Here, "Saved.");
        return await Refused(kept.Refusals, typed: true);
    }

    public async Task<IActionResult> OnPostArchiveAsync()
    {
        var put = await archive.Set(Place, archived: true, Actor);
        return put.Succeeded ? Done("/settings/places", "The place is archived; what is booked there stays.", $"{Here}?handler=Restore") : await Refused(put.Refusals);
    }

    public async Task<IActionResult> OnPostRestoreAsync()
    {
        var put = await archive.Set(Place, archived: false, Actor);
        return put.Succeeded ? Done(Here, "Brought back.") : await Refused(put.Refusals);
    }

    public async Task<IActionResult> OnPostBayAsync([FromServices] KeepBay keepBay)
    {
        var form = new BayForm { Id = Bay.Id is { } id ? ResourceId.From(id) : null, Version = Bay.Version, PlaceId = Place, Name = Bay.Name ?? "" };
        var kept = await keepBay.As(form, Actor);
        return kept.Succeeded ? Done($"{Here}#bays", $"{form.Name.Trim()} is kept.") : await Refused(kept.Refusals);
    }

    public async Task<IActionResult> OnPostSetBayAsync(Guid bay, bool archived, [FromServices] ArchiveBay archiveBay)
    {
        var put = await archiveBay.Set(ResourceId.From(bay), archived, Actor);
        if (!put.Succeeded) return await Refused(put.Refusals);
        return archived ? Done($"{Here}#bays", "Archived; what is booked in it stays.", $"{Here}?handler=SetBay&bay={bay}&archived=false") : Done($"{Here}#bays", "Brought back.");
    }

    public async Task<IActionResult> OnPostWaysAsync([FromServices] KeepWays keepWays)
    {
        var minutes = new Dictionary<PlaceId, int>();
        foreach (var (place, text) in Ways)
        {
            if (!int.TryParse(string.IsNullOrWhiteSpace(text) ? "0" : text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number)) return await Refused([new Refusal("way-minutes", $"'{text}' is no number of minutes; write it like 25.")]);
            minutes[PlaceId.From(place)] = number;
        }

        var kept = await keepWays.From(Place, minutes, Actor);
        return kept.Succeeded ? Done($"{Here}#ways", "The ways are kept.") : await Refused(kept.Refusals);
    }

    private async Task<IActionResult> Refused(IReadOnlyList<Refusal> refusals, bool typed = false)
    {
        if (!await Look(typed)) return NotFound();
        if (typed && refusals[0].Code == Clash.Code) Input.Version = Shown.Place.Version;
        return Refuse(refusals, typed ? "Input." : "");
    }

    private async Task<bool> Look(bool typed = false)
    {
        (All, SetUp) = (await read.All(), await setUp.Now());
        if (All.Places.FirstOrDefault(p => p.Place.Id == Place) is not { } shown) return false;
        Shown = shown;
        if (!typed) Input = new PlaceFields { Version = shown.Place.Version, Name = shown.Place.Name, Address = shown.Place.Address };
        return true;
    }
}
