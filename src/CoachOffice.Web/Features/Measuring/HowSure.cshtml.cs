using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Measuring.Again;
using CoachOffice.UseCases.Measuring.Sure;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Measuring;

/// <summary>How sure are we: the error of a reading, by the rulebook and by the practice's own studies.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class HowSureModel(ReadHowSure read, ListSecondReadings waiting, ProposeOwnScatter propose, ReadPractice practice) : OfficePage
{
    internal IReadOnlyList<SureMeasure> Measures { get; private set; } = [];

    internal IReadOnlyList<WaitingTake> Waiting { get; private set; } = [];

    internal UnitText Units { get; private set; } = UnitText.Metric;

    public Task OnGetAsync() => Load();

    /// <summary>Puts the practice's own scatter into the coach's changes of the rulebook.</summary>
    public async Task<IActionResult> OnPostOwnAsync(string measure)
    {
        var proposed = string.IsNullOrWhiteSpace(measure) ? new Refusal("measure-not-found", "") : await propose.Of(MeasureId.From(measure), Actor);
        if (proposed.Succeeded) return Done("/rulebook/changes", "Your own scatter waits among your changes of the rulebook: look what it would change, then put it into force.");
        await Load();
        return Refuse(proposed.Refusals, "");
    }

    internal string Amount(double value, Measure measure) => Units.Amount(value, measure.Unit);

    private async Task Load()
    {
        Measures = await read.Now();
        Waiting = await waiting.Waiting();
        Units = UnitText.Of(await practice.Now());
    }
}
