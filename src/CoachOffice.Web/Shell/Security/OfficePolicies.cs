using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using Microsoft.AspNetCore.Authorization;

namespace CoachOffice.Web.Shell.Security;

/// <summary>Rights of pages; each use case checks its own again.</summary>
internal static class OfficePolicies
{
    /// <summary>Owners and coaches: lessons, drafts, plans.</summary>
    public const string Teach = "teach";

    /// <summary>Owners: the practice, its accounts, erasing.</summary>
    public const string Own = "own";

    public static void AddOfficePolicies(this IServiceCollection services) =>
        services.AddAuthorizationBuilder()
            .SetFallbackPolicy(new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build())
            .AddPolicy(Teach, static p => p.RequireClaim(OfficeClaims.Policy, Terms.Of(Policy.Owner), Terms.Of(Policy.Coach)))
            .AddPolicy(Own, static p => p.RequireClaim(OfficeClaims.Policy, Terms.Of(Policy.Owner)));
}
