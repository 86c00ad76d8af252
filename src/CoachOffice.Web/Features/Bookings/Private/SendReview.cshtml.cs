using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Lessons.Reviews;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>A student sends clips in for a remote review.</summary>
[RequestSizeLimit(LargestBody)]
[RequestFormLimits(MultipartBodyLengthLimit = LargestBody)]
public sealed class SendReviewModel(ReviewOffers offers, SubmitReview submit, INewIds ids) : VisitPage
{
    // More than all clips may have by the settings: how much one may have, the operation says in words.
    private const long LargestBody = 4_300_000_000;

    /// <summary>Made when the page is opened: the same form sent twice is one review.</summary>
    [BindProperty]
    public Guid Id { get; set; }

    [BindProperty]
    public Guid? OfferingId { get; set; }

    [BindProperty]
    public string? Club { get; set; }

    [BindProperty]
    public string? BallFlight { get; set; }

    [BindProperty]
    public string? Felt { get; set; }

    [BindProperty]
    public string? Numbers { get; set; }

    /// <summary>IANA zone of the student's device, filled in by script; without one the promise is told in the practice's zone.</summary>
    [BindProperty]
    public string? Zone { get; set; }

    internal ReviewOffersView Offers { get; private set; } = null!;

    internal IReadOnlyList<Refusal> Refusals { get; private set; } = [];

    public async Task OnGetAsync()
    {
        Id = ids.Next();
        Offers = await offers.For(Pass);
    }

    public async Task<IActionResult> OnPostAsync(List<IFormFile>? clips)
    {
        Offers = await offers.For(Pass);
        var sent = Terms.TryParse<Club>(Club, out var club)
            ? await submit.From(Form(club, clips ?? []), Pass, HttpContext.RequestAborted)
            : new Refusal("club-not-known", "Pick one of the five clubs.", nameof(Club));
        if (sent.Succeeded) return LocalRedirect("/my-lessons/review#sent");
        Refusals = sent.Refusals;
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    private ReviewForm Form(Club club, IReadOnlyList<IFormFile> clips) => new()
    {
        Id = ReviewId.From(Id == Guid.Empty ? ids.Next() : Id),
        OfferingId = Domain.Bookings.OfferingId.From(OfferingId is { } offering && offering != Guid.Empty ? offering : Offers.Offerings is [var only] ? only.Id.Value : ids.Next()),
        Words = new ReviewWords { Club = club, BallFlight = BallFlight ?? "", Felt = Felt ?? "", Numbers = Numbers ?? "" },
        Zone = Zone ?? "",
        Clips = [.. clips.Where(c => c.Length > 0).Select<IFormFile, Func<Stream>>(c => c.OpenReadStream)],
    };
}
