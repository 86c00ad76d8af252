using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Shows a plan to the student.</summary>
public sealed class PlanSheet
{
    public Task<PlanSheetView?> For(PlanId plan) => throw new InvalidOperationException("This part is on its way.");
}
