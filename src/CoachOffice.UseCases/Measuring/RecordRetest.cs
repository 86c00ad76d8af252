using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Measuring;

/// <summary>Records a re-test and judges whether the number moved.</summary>
public sealed class RecordRetest
{
    public Task<Outcome<KeptVerdict>> With(RetestForm form, Actor actor) => throw new InvalidOperationException("This part is on its way.");
}
