using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Insight;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students.Charts;

public sealed class AllModel(ReadMeasureHistory history, ReadPractice practice) : StudentCharts(history, practice)
{
    public async Task<IActionResult> OnGetAsync(Guid id) => await Look(id) ? Page() : NotFound();
}
