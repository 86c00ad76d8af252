using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Takes a practice note; a pain report pauses the plan at once.</summary>
public sealed class RecordCheckIn
{
    public Task<Outcome<CheckInResult>> From(CheckInForm form, LinkPass pass) => throw new InvalidOperationException("This part is on its way.");
}
