using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Media;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Media;

[Authorize(OfficePolicies.Teach)]
public sealed class StillModel(StillPage page, MarkStill mark, PutIntoSheet put, StillValues values, ReadPractice practice) : OfficePage
{
    [BindProperty]
    public StillInput Input { get; set; } = new();

    public StillView View { get; private set; } = null!;

    internal UnitText Units { get; private set; } = UnitText.Metric;

    /// <summary>The points this still asks for, in marking order.</summary>
    public IReadOnlyList<Landmark> Points => PictureMeasures.LandmarksOf(View.Shows.View, View.Shows.Moment);

    internal StillDrawing Drawing => new(View, Points, Input);

    public bool MayBeSeen => View.Permission == MediaPermission.Given;

    public async Task<IActionResult> OnGetAsync(Guid id, Guid still)
    {
        if (!await Look(id, still)) return NotFound();
        Input = StillInput.Of(View, Units);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(Guid id, Guid still)
    {
        if (!await Look(id, still)) return NotFound();
        return await Mark() is { } refused ? Again(refused) : Done($"/lessons/{id}/stills/{still}", "The marks are kept.");
    }

    /// <summary>Keeps the marks, then puts the ticked values into the sheet.</summary>
    public async Task<IActionResult> OnPostPutAsync(Guid id, Guid still)
    {
        if (!await Look(id, still)) return NotFound();
        if (await Mark() is { } refused) return Again(refused);
        var order = new PutOrder(LessonId.From(id), MediaId.From(still), Input.LessonVersion, Input.Version, Input.Put);
        var done = await put.From(order, Actor);
        if (done.TryGet(out var count)) return Done($"/lessons/{id}", count == 1 ? "One value from the still stands in the sheet." : $"{count} values from the still stand in the sheet.");

        // The marks are kept, only the sheet is not: what is shown again begins from both as they are now.
        if (await Look(id, still)) Input.LessonVersion = View.LessonVersion;
        return Refuse(done.Refusals, "");
    }

    /// <summary>What the points say as they stand in the fields now; nothing is saved.</summary>
    public async Task<IActionResult> OnPostMeasureAsync(Guid id, Guid still)
    {
        if (!await Look(id, still)) return NotFound();
        var form = Input.ToForm(Units);
        var wrong = form.TryGet(out var given) ? StillCheck.Of(given.Marks, View.Still).ToList() : form.Refusals;
        var read = wrong.Count > 0 ? [] : await values.Of(View.Still, given!, HttpContext.RequestAborted);
        return Partial("_Values", new ValuesShown(read, Units, wrong));
    }

    private async Task<IReadOnlyList<Refusal>?> Mark()
    {
        var form = Input.ToForm(Units);
        if (!form.TryGet(out var given)) return form.Refusals;
        var kept = await mark.As(View.Still.Id, Input.Version, given, Actor);
        if (!kept.TryGet(out var version)) return kept.Refusals;
        Input.Version = version;
        return null;
    }

    private IActionResult Again(IReadOnlyList<Refusal> refusals)
    {
        // After a clash the page shows both values; saving again then means: mine.
        if (refusals.Any(r => r.Code == Clash.Code)) Input.Version = View.Still.Version;
        return Refuse(refusals, "");
    }

    private async Task<bool> Look(Guid id, Guid still)
    {
        if (await page.Of(LessonId.From(id), MediaId.From(still)) is not { } view) return false;
        (View, Units) = (view, UnitText.Of(await practice.Now()));
        return true;
    }
}
