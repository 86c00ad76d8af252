using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Ledger;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Households;

/// <summary>Who pays for a student.</summary>
public sealed class PaysPage(OfficeDb db, PracticeClock clock, HouseholdPage households, ReadStudentMoney money)
{
    /// <summary>The payer with the household, or who is offered to be it.</summary>
    public async Task<Outcome<PaysView>> Of(StudentId id, CancellationToken stop = default)
    {
        var student = await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == id && s.ErasedAt == null, stop);
        if (student is null) return StudentRefusals.NotFound;
        var minor = student.BirthDate is { } born && Ages.IsMinor(born, await clock.Today(stop));
        return new PaysView
        {
            Student = student,
            Household = student.PayerId is { } payer && (await households.Of(payer, stop)).TryGet(out var household) ? household : null,
            Offered = [.. Offered(student, minor)],
            IsMinor = minor,
            Money = await money.Of(student, stop),
        };
    }

    // A minor pays for nothing; a grown-up may still have a guardian on record.
    private static IEnumerable<PayerDetails> Offered(Student student, bool minor)
    {
        if (student.Guardian is { } guardian) yield return new PayerDetails { Name = guardian.Name.Length > 0 ? guardian.Name : guardian.Email, Email = guardian.Email };
        if (!minor) yield return new PayerDetails { Name = student.FullName, Email = student.Email };
    }
}
