using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Grades readings while they are typed; keeps nothing.</summary>
public sealed class GradeReadings
{
    public Task<IReadOnlyList<Finding>> Live(StudentId student, Club club, IReadOnlyList<TakenReading> taken) => throw new InvalidOperationException("This part is on its way.");
}
