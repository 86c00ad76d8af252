using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Access;

/// <summary>First run: the practice and its owner, once. Of two at the same time one is refused.</summary>
public sealed class OpenPractice(OfficeDb db, Accounts accounts, AuditTrail trail, INewIds ids, IClock clock)
{
    /// <summary>The owner's account, or everything that is wrong with the form.</summary>
    public async Task<Outcome<AccountId>> For(FirstRunForm form, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        var wrong = form.Practice.Check();
        if (wrong.Count > 0) return Outcome<AccountId>.Refused(wrong);
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        if (await db.Practices.AnyAsync(stop)) return WasOpened();
        var practice = Practice.Open(ids.Next(), form.Practice, form.IsDemo, clock.GetCurrentInstant());
        db.Practices.Add(practice);
        if (await db.TrySave(stop) != Saved.Yes) return WasOpened();
        var made = await accounts.Make(OwnerOf(form));
        if (!made.TryGet(out var owner)) return Outcome<AccountId>.Refused(made.Refusals);
        trail.Add(owner.AsActor(), "practice-opened", AuditSubject.Practice(practice.Id), form.IsDemo ? "demo" : null);
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
        return owner.AccountId;
    }

    private static NewAccountForm OwnerOf(FirstRunForm form) =>
        new() { DisplayName = form.OwnerName, Email = form.OwnerEmail, Password = form.Password, Policy = Policy.Owner };

    /// <summary>What a second first run is told.</summary>
    public static Refusal WasOpened() => new("practice-open", "This practice was opened already. Sign in instead, or ask its owner for an account.");
}
