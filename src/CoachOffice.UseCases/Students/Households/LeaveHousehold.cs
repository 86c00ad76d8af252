using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Students.Households;

/// <summary>Takes a student out of a household: they get a payer of their own when there is something to pay again. Entries so far stay with the payer.</summary>
public sealed class LeaveHousehold(OfficeDb db, HouseholdDoor door, AuditTrail trail)
{
    /// <summary>The student, or why not; whoever has no payer is no fault.</summary>
    public async Task<Outcome<StudentId>> The(StudentId id, Actor actor, CancellationToken stop = default)
    {
        var found = await door.Find(id, actor, stop);
        if (!found.TryGet(out var student)) return Outcome<StudentId>.Refused(found.Refusals);
        if (student.PayerId is not { } payer) return id;
        student.PaidByNobody();
        trail.Add(actor, "payer-left", AuditSubject.Of(id), $"payer:{payer.Value}");
        return await db.TrySave(stop) == Saved.Yes ? id : StudentRefusals.Busy;
    }
}
