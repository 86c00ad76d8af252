using System.Security.Claims;
using CoachOffice.Data.Access;
using CoachOffice.Domain;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace CoachOffice.Web.Shell.Security;

/// <summary>Puts the person's name and policy into the session, so that most pages need not ask the database who is there.</summary>
internal sealed class OfficePrincipals(UserManager<Account> accounts, IOptions<IdentityOptions> options)
    : UserClaimsPrincipalFactory<Account>(accounts, options)
{
    protected override async Task<ClaimsIdentity> GenerateClaimsAsync(Account user)
    {
        var identity = await base.GenerateClaimsAsync(user);
        if (identity.FindFirst(identity.NameClaimType) is { } name) identity.RemoveClaim(name);
        identity.AddClaim(new Claim(identity.NameClaimType, user.DisplayName));
        identity.AddClaim(new Claim(OfficeClaims.Policy, Terms.Of(user.Policy)));
        return identity;
    }
}
