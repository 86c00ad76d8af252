using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Ledger;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Households;

/// <summary>Puts a student into a household: its payer pays for them from now on.</summary>
public sealed class JoinHousehold(OfficeDb db, HouseholdDoor door)
{
    /// <summary>The payer, or why not; whoever is in it already stays in it.</summary>
    public async Task<Outcome<PayerId>> The(StudentId id, PayerId payer, Actor actor, CancellationToken stop = default)
    {
        var found = await door.Find(id, actor, stop);
        if (!found.TryGet(out var student)) return Outcome<PayerId>.Refused(found.Refusals);
        if (!await db.Payers.AnyAsync(p => p.Id == payer && p.ErasedAt == null, stop)) return PayerRefusals.NotFound;
        return await door.Save(student, payer, actor, stop);
    }
}
