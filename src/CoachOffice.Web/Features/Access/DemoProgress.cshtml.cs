using CoachOffice.UseCases.Access;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Access;

public sealed class DemoProgressModel(DemoOpening demo, ReadPractice practice) : OfficePage
{
    public int Percent => demo.Percent;

    public string Doing => demo.Doing;

    public async Task<IActionResult> OnGetAsync()
    {
        if (!demo.IsBusy && await practice.Now() is null) return RedirectToPage("FirstRun");
        if (!demo.IsBusy) return Done("/sign-in", "The demo practice is ready. Sign in with the mail address and password you chose.");
        // Without script and without a meta element: the browser asks again by itself.
        Response.Headers["Refresh"] = "2";
        return Page();
    }
}
