using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Ledger;

namespace CoachOffice.UseCases.Students.Households;

/// <summary>Makes two students one household: whoever pays for the one pays for the other.</summary>
public sealed class ShareAPayer(HouseholdDoor door, OwnPayer own)
{
    /// <summary>The payer, or why not. A student without a payer gets their own at this, a minor their guardian.</summary>
    public async Task<Outcome<PayerId>> Of(StudentId with, StudentId id, Actor actor, CancellationToken stop = default)
    {
        var found = await door.Find(id, actor, stop);
        if (!found.TryGet(out var student)) return Outcome<PayerId>.Refused(found.Refusals);
        var other = await door.Find(with, actor, stop);
        if (!other.TryGet(out var payingFor)) return Outcome<PayerId>.Refused(other.Refusals);
        return await door.Save(student, await own.Of(payingFor, stop), actor, stop);
    }
}
