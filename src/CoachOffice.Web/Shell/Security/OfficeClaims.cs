using System.Security.Claims;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;

namespace CoachOffice.Web.Shell.Security;

/// <summary>What the session knows of the person.</summary>
internal static class OfficeClaims
{
    /// <summary>The account's policy, as its word.</summary>
    public const string Policy = "policy";

    /// <summary>How they signed in; Identity writes "mfa" after a second factor.</summary>
    public const string Method = "amr";

    /// <summary>Value of <see cref="Method"/> after a second factor.</summary>
    public const string SecondFactor = "mfa";

    public static Actor AsActor(this ClaimsPrincipal person) => new(
        Guid.TryParse(person.FindFirstValue(ClaimTypes.NameIdentifier), out var id) ? AccountId.From(id) : null,
        person.Identity?.Name ?? "",
        Terms.TryParse<Policy>(person.FindFirstValue(Policy), out var policy) ? policy : null);

    public static bool UsedSecondFactor(this ClaimsPrincipal person) => person.HasClaim(Method, SecondFactor);
}
