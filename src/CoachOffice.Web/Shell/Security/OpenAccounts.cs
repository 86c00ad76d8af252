using CoachOffice.Data.Access;
using Microsoft.AspNetCore.Identity;

namespace CoachOffice.Web.Shell.Security;

/// <summary>Only accounts that were not closed may sign in.</summary>
internal sealed class OpenAccounts : IUserConfirmation<Account>
{
    public Task<bool> IsConfirmedAsync(UserManager<Account> manager, Account user) => Task.FromResult(user.DisabledAt is null);
}
