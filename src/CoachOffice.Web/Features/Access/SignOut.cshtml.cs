using CoachOffice.Data.Access;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Access;

public sealed class SignOutModel(SignInManager<Account> signIn) : OfficePage
{
    public void OnGet()
    {
    }

    public async Task<IActionResult> OnPostAsync()
    {
        await signIn.SignOutAsync();
        // Lessons kept on a shared tablet must not wait there for the next person.
        Response.Headers["Clear-Site-Data"] = "\"cache\", \"storage\"";
        return RedirectToPage("SignedOut");
    }
}
