using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Insight;
using CoachOffice.Web.Features.Students.Charts;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Plans.Private;

/// <summary>The student's own numbers, without the trade's words.</summary>
public sealed class NumbersModel(ReadMyNumbers numbers, ReadPractice practice, KeptDrawings kept) : LinkPage
{
    internal IReadOnlyList<MeasureHistory> Numbers { get; private set; } = [];

    internal UnitText Units { get; private set; } = UnitText.Metric;

    public async Task<IActionResult> OnGetAsync()
    {
        Units = UnitText.Of(await practice.Now());
        if (await numbers.For(Pass) is not { } mine) return NotFound();
        Numbers = mine;
        return Page();
    }

    /// <summary>One measure's drawing.</summary>
    public async Task<IActionResult> OnGetDrawingAsync(string measure)
    {
        if (await numbers.StampFor(Pass) is not { } stamp) return NotFound();
        Units = UnitText.Of(await practice.Now());
        return await new DrawingAnswer(kept, HttpContext).Of(
            $"{stamp} {Pass.PlanId} {Units.System} {measure} mine",
            async () => await numbers.For(Pass) is { } mine && mine.FirstOrDefault(m => m.Measure.Id.Value == measure) is { } history ? new ChartDrawing(history, Units, isSmall: true) : null);
    }
}
