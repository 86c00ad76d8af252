using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Plans;
using CoachOffice.Web.Features.Plans.Story;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Plans;

/// <summary>The draft while it is one, the plan's life afterwards.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class PlanModel(DraftPage draft, PlanPage life, ReadPractice practice, PracticeClock clock, IServiceProvider services) : OfficePage
{
    internal PlanScreen Screen { get; private set; } = null!;

    [BindProperty]
    public PlanPost Post { get; set; } = new();

    /// <summary>The form to show, by its id.</summary>
    [BindProperty(SupportsGet = true, Name = "open")]
    public string? Shown { get; set; }

    public async Task<IActionResult> OnGetAsync(Guid id) => await Load(id) ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync(Guid id, [FromQuery(Name = "do")] string? step)
    {
        if (services.GetRequiredService<PlanVerbs>().Named(step) is not { } verb) return NotFound();
        var refusals = await verb.Run(PlanId.From(id), Post, Actor);
        if (refusals.Count == 0) return Done($"/plans/{id}", verb.Sentence);
        return await Load(id) ? Refuse(refusals, "") : NotFound();
    }

    private async Task<bool> Load(Guid id)
    {
        if (await draft.Of(PlanId.From(id)) is not { } view) return false;
        var units = (await practice.Now())?.Units ?? UnitSystem.Metric;
        Screen = new PlanScreen
        {
            Draft = view,
            Story = services.GetRequiredService<DraftStories>().Of(view, units),
            Open = Shown,
            Life = view.Status == PlanStatus.Draft ? null : await life.Of(PlanId.From(id)),
            Units = new UnitText(units),
            Zone = await clock.Zone(),
            Today = await clock.Today(),
            Posted = HttpMethods.IsPost(Request.Method) ? Post : null,
        };
        return true;
    }
}
