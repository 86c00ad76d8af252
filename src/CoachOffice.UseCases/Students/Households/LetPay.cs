using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Households;

/// <summary>Lets somebody new pay for a student: a parent, the student themselves, a club.</summary>
public sealed class LetPay(OfficeDb db, HouseholdDoor door)
{
    /// <summary>The payer under an id made when the form was shown, so that a form posted twice makes one; or what is wrong with the details.</summary>
    public async Task<Outcome<PayerId>> For(StudentId id, PayerId payer, PayerDetails details, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(details);
        var found = await door.Find(id, actor, stop);
        if (!found.TryGet(out var student)) return Outcome<PayerId>.Refused(found.Refusals);
        if (details.Check() is { Count: > 0 } wrong) return Outcome<PayerId>.Refused(wrong);
        if (!await db.Payers.AnyAsync(p => p.Id == payer, stop)) db.Payers.Add(Payer.Register(payer, details, door.Now));
        return await door.Save(student, payer, actor, stop);
    }
}
