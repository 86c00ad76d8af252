using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Insight;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;

namespace CoachOffice.Web.Features.Students.Charts;

/// <summary>A page about one student's measures over time.</summary>
[Authorize(OfficePolicies.Teach)]
public abstract class StudentCharts(ReadMeasureHistory history, ReadPractice practice) : OfficePage
{
    public MeasureHistories Histories { get; private set; } = null!;

    internal UnitText Units { get; private set; } = UnitText.Metric;

    /// <summary>What a drawing of them depends on, and the units it is drawn in; null when there is no such student.</summary>
    protected async Task<HistoryStamp?> Stamp(Guid student)
    {
        Units = UnitText.Of(await practice.Now(HttpContext.RequestAborted));
        return await history.StampOf(StudentId.From(student), HttpContext.RequestAborted);
    }

    /// <summary>Reads them; false when there is no such student.</summary>
    protected async Task<bool> Look(Guid student) => await Stamp(student) is { } stamp && await Look(stamp);

    /// <summary>Reads those a stamp was just given for.</summary>
    protected async Task<bool> Look(HistoryStamp stamp)
    {
        if (await history.At(stamp, HttpContext.RequestAborted) is not { } found) return false;
        Histories = found;
        return true;
    }
}
