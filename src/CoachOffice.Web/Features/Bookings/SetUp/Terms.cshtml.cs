using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Bookings.SetUp;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Bookings.SetUp;

[Authorize(Policy = OfficePolicies.Own)]
public sealed class TermsModel(ReadBookingTerms read, ChangeBookingTerms change) : OfficePage
{
    [BindProperty]
    public TermsFields Input { get; set; } = new();

    public async Task OnGetAsync() => Input = TermsFields.Of(await read.Now());

    public async Task<IActionResult> OnPostAsync()
    {
        var saved = await change.To(Input.Version, Input.Details(), Actor);
        if (saved.Succeeded) return Done("/settings/booking-terms", "Saved. They hold for whatever is cancelled from now on.");
        if (saved.Refusals[0].Code == Clash.Code)
        {
            Input.Version = (await read.Now()).Version;
            ModelState.Remove("Input.Version");
        }

        return Refuse(saved.Refusals);
    }
}
