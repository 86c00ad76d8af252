using CoachOffice.Data;
using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.SeedDemo.Year;

/// <summary>Reads what the invented people would see on their pages.</summary>
internal static class PlanLook
{
    public static Task<Plan> Of(OfficeDb db, PlanId id, CancellationToken stop) => db.Plans.AsNoTracking().Include(p => p.Stages).SingleAsync(p => p.Id == id, stop);

    public static Task<int> Version(OfficeDb db, PlanId id, CancellationToken stop) => db.Plans.Where(p => p.Id == id).Select(p => p.Version).SingleAsync(stop);
}
