using CoachOffice.Data.Access;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using Microsoft.AspNetCore.Identity;

namespace CoachOffice.UseCases.Access;

/// <summary>Finds who acts where nobody signs in: a command in a shell of the office's own machine. Whoever may read the data folder may be anyone there; the history names the account.</summary>
public sealed class FindActor(UserManager<Account> accounts)
{
    /// <summary>The account of a mail address, unless it was closed.</summary>
    public async Task<Outcome<Actor>> ByMail(string mail) =>
        await accounts.FindByEmailAsync(mail) is { DisabledAt: null } account
            ? account.AsActor()
            : new Refusal("account-not-found", $"Nobody here has the mail address '{mail}', or the account is closed.");
}
