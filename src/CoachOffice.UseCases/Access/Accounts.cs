using CoachOffice.Data.Access;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using Microsoft.AspNetCore.Identity;
using NodaTime;

namespace CoachOffice.UseCases.Access;

/// <summary>Makes accounts, for the first run and for an owner alike; part of the caller's transaction.</summary>
public sealed class Accounts(UserManager<Account> users, INewIds ids, IClock clock)
{
    /// <summary>A new account, or everything that is wrong with the form.</summary>
    public async Task<Outcome<Account>> Make(NewAccountForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        var wrong = Check(form).ToList();
        if (wrong.Count > 0) return Outcome<Account>.Refused(wrong);
        var email = form.Email.Trim();
        var account = new Account
        {
            Id = ids.Next(),
            UserName = email,
            Email = email,
            DisplayName = form.DisplayName.Trim(),
            Policy = form.Policy,
            AddedAt = clock.GetCurrentInstant(),
        };
        var made = await users.CreateAsync(account, form.Password);
        return made.Succeeded ? account : Outcome<Account>.Refused([.. made.Errors.Select(AccountRefusals.Of).DistinctBy(r => r.Code)]);
    }

    private static IEnumerable<Refusal> Check(NewAccountForm form)
    {
        if (!OneLine.Shows(form.DisplayName) || form.DisplayName.Length > 120)
            yield return new("account-name", "Give a name of up to 120 characters; it stands on plans and in histories.", nameof(form.DisplayName));
        if (!OneLine.Fits(form.DisplayName)) yield return new("account-name-line", OneLine.Wanted, nameof(form.DisplayName));
        if (!MailAddress.LooksRight(form.Email.Trim()))
            yield return new("account-mail", $"'{form.Email}' is no mail address; write it like name@example.org.", nameof(form.Email));
    }
}
