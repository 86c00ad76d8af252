using CoachOffice.UseCases.Bookings.SetUp;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Bookings.SetUp;

[Authorize(Policy = OfficePolicies.Own)]
public sealed class PlacesModel(ReadPlaces read, ReadSetUp setUp, KeepPlace keep) : OfficePage
{
    [BindProperty]
    public PlaceFields Input { get; set; } = new();

    public PlacesView All { get; private set; } = new([], []);

    public SetUpState SetUp { get; private set; } = new(true, true, true);

    public Task OnGetAsync() => Look();

    public async Task<IActionResult> OnPostAsync()
    {
        var kept = await keep.As(new PlaceForm { Name = Input.Name ?? "", Address = Input.Address ?? "" }, Actor);
        if (kept.TryGet(out var id)) return Done(OfficeLinks.To(id), "The place is added. Name its bays or rooms here, if a lesson takes one.");
        await Look();
        return Refuse(kept.Refusals);
    }

    private async Task Look() => (All, SetUp) = (await read.All(), await setUp.Now());
}
