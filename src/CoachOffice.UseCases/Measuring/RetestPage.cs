using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Measuring;

/// <summary>Shows a re-test to be recorded, or its verdict.</summary>
public sealed class RetestPage
{
    public Task<RetestView?> Of(Guid retest) => throw new InvalidOperationException("This part is on its way.");
}
