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

    public void OnGet(int? code) => Show(code);

    public void OnPost(int? code) => Show(code);

    private void Show(int? code)
    {
        var status = code is >= 400 and <= 599 ? code.Value : StatusCodes.Status404NotFound;
        Problem = Problems.Of(HttpContext, status);
        if (status >= 500) Reference = Activity.Current?.TraceId.ToString() ?? HttpContext.TraceIdentifier;
        Response.StatusCode = status;
    }
}
