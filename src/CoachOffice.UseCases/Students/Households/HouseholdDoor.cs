using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Students.Households;

/// <summary>Finds the student whose payer is to change, for whoever may, and saves what was done.</summary>
public sealed class HouseholdDoor(OfficeDb db, PracticeClock clock, AuditTrail trail)
{
    internal Instant Now => clock.Now;

    internal async Task<Outcome<Student>> Find(StudentId id, Actor actor, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("say who pays");
        var student = await db.Students.SingleOrDefaultAsync(s => s.Id == id && s.ErasedAt == null, stop);
        return student is null ? StudentRefusals.NotFound : student;
    }

    /// <summary>Lets the payer pay for the student from now on; entries so far stay where they are.</summary>
    internal async Task<Outcome<PayerId>> Save(Student student, PayerId payer, Actor actor, CancellationToken stop)
    {
        if (student.PayerId == payer) return payer;
        student.PaidBy(payer);
        trail.Add(actor, "payer-set", AuditSubject.Of(student.Id), $"payer:{payer.Value}");
        return await db.TrySave(stop) == Saved.Yes ? payer : StudentRefusals.Busy;
    }
}
