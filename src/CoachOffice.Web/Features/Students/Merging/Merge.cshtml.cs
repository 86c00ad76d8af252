using CoachOffice.Domain;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students.Merging;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Students.Merging;

/// <summary>Two records side by side, and their becoming one.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class MergeModel(MergePage page, MergeStudents merge, PracticeClock clock) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    [BindProperty(SupportsGet = true, Name = "other")]
    public Guid Other { get; set; }

    [BindProperty]
    public int StaysVersion { get; set; }

    [BindProperty]
    public int GoesVersion { get; set; }

    internal MergeView View { get; private set; } = null!;

    private DateTimeZone Zone { get; set; } = DateTimeZone.Utc;

    internal LocalDate DayOf(Instant instant) => instant.InZone(Zone).Date;

    /// <summary>True when the other record's value is chosen, or is the better guess before anything was chosen.</summary>
    internal bool Takes(MergeField field) => Request.HasFormContentType ? Request.Form[$"take[{field.Key}]"] == "goes" : field.TakesOther;

    public async Task<IActionResult> OnGetAsync() => await Look() ?? Page();

    public async Task<IActionResult> OnPostAsync()
    {
        if (await Look() is { } gone) return gone;
        var taken = View.Fields.Where(f => f.Differs && Takes(f)).Select(f => f.Key).ToList();
        var merged = await merge.As(new MergeOrder(StudentId.From(Id), StaysVersion, StudentId.From(Other), GoesVersion, taken), Actor);
        if (merged.TryGet(out var stays)) return Done(OfficeLinks.To(stays), "The two records are one now.");
        if (merged.Refusals.Any(r => r.Code == Clash.Code)) ModelState.Clear();
        return Refuse(merged.Refusals, "");
    }

    // Null when there is a page to show.
    private async Task<IActionResult?> Look()
    {
        var looked = await page.Of(StudentId.From(Id), StudentId.From(Other), Actor);
        if (!looked.TryGet(out var view)) return looked.Refusals[0].Code == "same-record" ? LocalRedirect(OfficeLinks.Merge(StudentId.From(Id))) : Refuse(looked.Refusals, "");
        (View, Zone) = (view, await clock.Zone());
        return null;
    }
}
