using System.Diagnostics;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace CoachOffice.Web.Features.Problem;

/// <summary>Shown in place of an answer that could not be given. It changes nothing, so it asks for no proof of origin: the request it stands in for may lack one.</summary>
[IgnoreAntiforgeryToken]
[ResponseCache(NoStore = true, Location = ResponseCacheLocation.None)]
public sealed class IndexModel : PageModel
{
    internal ProblemText Problem { get; private set; } = Problems.FormExpired;

    /// <summary>Only for failures: what to look for in the log.</summary>
    public string? Reference { get; private set; }

    public void OnGet() => Show();

    public void OnPost() => Show();

    private void Show()
    {
        // From the address alone: binding would read the body again, which may be what could not be read.
        var status = int.TryParse(RouteData.Values["code"] as string, out var code) && code is >= 400 and <= 599 ? code : StatusCodes.Status404NotFound;
        Problem = Problems.Of(HttpContext, status);
        if (status >= 500) Reference = Activity.Current?.TraceId.ToString() ?? HttpContext.TraceIdentifier;
        Response.StatusCode = status;
    }
}
