using CoachOffice.Domain;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.WebUtilities;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>What the pages of a student's own lessons do alike: whose they are, whose clock times are read on, how a refusal is shown.</summary>
public abstract class LessonsPage(ReadVisitor visitor) : VisitPage
{
    /// <summary>IANA zone the reader wants times in beside the practice's; carried from page to page in their addresses.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Zone { get; set; }

    /// <summary>What was refused in this request.</summary>
    public IReadOnlyList<Refusal> Refusals { get; private set; } = [];

    public VisitorView Visitor { get; private set; } = null!;

    /// <summary>How times are written for this reader.</summary>
    internal VisitClock Clock { get; private set; } = null!;

    /// <summary>An address of ours with the reader's zone kept.</summary>
    public string Keep(string address) => Clock.Reader is { } zone ? QueryHelpers.AddQueryString(address, "zone", zone.Id) : address;

    protected async Task Greet()
    {
        Visitor = await visitor.Of(Pass, HttpContext.RequestAborted);
        Clock = new VisitClock(Visitor.Zone, string.IsNullOrEmpty(Zone) ? null : DateTimeZoneProviders.Tzdb.GetZoneOrNull(Zone));
    }

    /// <summary>Goes on to one of these pages, and says there what was done.</summary>
    protected IActionResult Done(string address, string? sentence = null)
    {
        if (sentence is not null) TempData.Leave(new Notice(sentence));
        return LocalRedirect(Keep(address));
    }

    /// <summary>Shows the page again with every sentence; what is not there, or is somebody else's, becomes 404.</summary>
    protected IActionResult Refuse(IReadOnlyList<Refusal> refusals)
    {
        ArgumentNullException.ThrowIfNull(refusals);
        if (refusals.Any(r => r.Code.EndsWith("not-found", StringComparison.Ordinal))) return NotFound();
        Refusals = refusals;
        Response.StatusCode = refusals.Any(r => r.Code == Clash.Code) ? StatusCodes.Status409Conflict : StatusCodes.Status422UnprocessableEntity;
        return Page();
    }
}
