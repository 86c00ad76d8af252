using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Insight;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students.Charts;

public sealed class OneModel(ReadMeasureHistory history, ReadPractice practice, KeptDrawings kept) : StudentCharts(history, practice)
{
    public MeasureHistory History { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(Guid id, string measure, string club) => await Stamp(id) is { } stamp && await Find(stamp, measure, club) ? Page() : NotFound();

    /// <summary>The drawing alone; a browser that holds the same one is told so.</summary>
    public async Task<IActionResult> OnGetDrawingAsync(Guid id, string measure, string club, bool small)
    {
        if (await Stamp(id) is not { } stamp) return NotFound();
        return await new DrawingAnswer(kept, HttpContext).Of(
            $"{stamp} {Units.System} {measure} {club} {small}",
            async () => await Find(stamp, measure, club) ? new ChartDrawing(History, Units, small) : null);
    }

    private async Task<bool> Find(HistoryStamp stamp, string measure, string club)
    {
        if (!Terms.TryParse<Club>(club, out var played) || !await Look(stamp)) return false;
        var found = Histories.Measures.FirstOrDefault(m => m.Measure.Id.Value == measure && m.Club == played);
        if (found is null) return false;
        History = found;
        return true;
    }
}
