using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Who pays for a student. Nobody is asked before there is something to pay: a student without a payer gets one of their own then, a minor their guardian.</summary>
public sealed class OwnPayer(OfficeDb db, PracticeClock clock, INewIds ids)
{
    /// <summary>The payer, added to the caller's transaction when there was none; it saves nothing itself.</summary>
    public async Task<PayerId> Of(Student student, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(student);
        if (student.PayerId is { } known) return known;
        var recipient = student.RecipientOn(await clock.Today(stop));
        var details = new PayerDetails { Name = recipient?.Name ?? student.FullName, Email = recipient?.Address ?? "" };
        var payer = Payer.Register(PayerId.From(ids.Next()), details, clock.Now);
        db.Payers.Add(payer);
        student.PaidBy(payer.Id);
        return payer.Id;
    }

    /// <summary>The same by the student's id; null when there is no such student.</summary>
    public async Task<PayerId?> Of(StudentId id, CancellationToken stop = default)
    {
        var student = await db.Students.SingleOrDefaultAsync(s => s.Id == id && s.ErasedAt == null, stop);
        return student is null ? null : await Of(student, stop);
    }
}
