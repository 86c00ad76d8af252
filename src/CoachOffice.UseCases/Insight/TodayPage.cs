using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Insight;

/// <summary>Shows what needs a person now.</summary>
public sealed class TodayPage
{
    public Task<TodayView> For(Actor actor) => throw new InvalidOperationException("This part is on its way.");
}
