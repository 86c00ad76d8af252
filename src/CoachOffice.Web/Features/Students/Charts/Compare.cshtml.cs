using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Insight.Compare;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students.Charts;

/// <summary>Two lessons of a student side by side.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class CompareModel(CompareLessons compare, ReadPractice practice) : OfficePage
{
    internal LessonsSideBySide Side { get; private set; } = null!;

    internal UnitText Units { get; private set; } = UnitText.Metric;

    public async Task<IActionResult> OnGetAsync(Guid id, Guid? earlier, Guid? later)
    {
        var found = await compare.Of(StudentId.From(id), Picked(earlier), Picked(later), HttpContext.RequestAborted);
        if (found is null) return NotFound();
        (Side, Units) = (found, UnitText.Of(await practice.Now(HttpContext.RequestAborted)));
        return Page();
    }

    internal static string Named(OfferedLesson lesson) => $"{DayWords.Of(lesson.HeldOn)}, {MeasureWords.Of(lesson.Club)}, {ChartWords.Of(lesson.Kind)}";

    internal string Value(Finding finding) => $"{Units.Amount(finding.Value.Value, finding.Measure.Unit)} ± {Units.Number(finding.StandardError, finding.Measure.Unit)}";

    /// <summary>The change with its sign, and whether it is one.</summary>
    internal string Change(ComparedMeasure row) =>
        row.Change is not { } change ? "" : $"{(change > 0 ? "+" : "")}{Units.Amount(change, row.Measure.Unit)}";

    private static LessonId? Picked(Guid? id) => id is { } given && given != Guid.Empty ? LessonId.From(given) : null;
}
