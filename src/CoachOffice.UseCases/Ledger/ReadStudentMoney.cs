using CoachOffice.Data;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Ledger.Packages;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger;

/// <summary>A student's money, for the student's page.</summary>
public sealed class ReadStudentMoney(OfficeDb db, LedgerBook book, PackageShelf shelf, PracticeClock clock)
{
    /// <summary>As it is today.</summary>
    public async Task<StudentMoney> Of(Student student, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(student);
        if (student.PayerId is not { } payer) return new StudentMoney(null, "", Money.Zero(await book.Currency(stop)), 0);
        var name = await db.Payers.Where(p => p.Id == payer).Select(p => p.Name).SingleAsync(stop);
        return new StudentMoney(payer, name, await book.Balance(payer, stop), await Credits(student.Id, payer, stop));
    }

    private async Task<int> Credits(StudentId id, PayerId payer, CancellationToken stop)
    {
        var today = await clock.Today(stop);
        var packages = await db.Packages.AsNoTracking().Where(p => p.ClosedAt == null && (p.ValidUntil == null || p.ValidUntil >= today) && (p.StudentId == id || (p.IsShared && p.PayerId == payer))).ToListAsync(stop);
        return (await shelf.CreditsOf(packages, stop)).Values.Sum(c => c.Free);
    }
}
