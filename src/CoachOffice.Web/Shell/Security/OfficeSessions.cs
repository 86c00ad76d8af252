using CoachOffice.Data.Access;
using CoachOffice.Web.Features.Access;
using Microsoft.AspNetCore.Identity;

namespace CoachOffice.Web.Shell.Security;

/// <summary>Accounts, passwords, lock-out and sessions that really end.</summary>
internal static class OfficeSessions
{
    private const int WrongTries = 5;
    private static readonly TimeSpan LockedFor = TimeSpan.FromMinutes(10);
    private static readonly TimeSpan LookAgain = TimeSpan.FromMinutes(2);

    public static void AddOfficeSessions(this IServiceCollection services)
    {
        services.AddIdentityCore<Account>(DoorRules)
            .AddSignInManager()
            .AddClaimsPrincipalFactory<OfficePrincipals>();
        services.AddScoped<IUserConfirmation<Account>, OpenAccounts>();
        services.AddSingleton<DemoOpening>();
        services.AddScoped<PasswordGuard>();
        services.AddScoped<SecondFactors>();
        services.AddScoped<UsedCodes>();
        services.Configure<SecurityStampValidatorOptions>(static options =>
        {
            // A closed account or "sign out everywhere" takes hold within this time in every browser.
            options.ValidationInterval = LookAgain;
            // The fresh principal does not know how the person signed in.
            options.OnRefreshingPrincipal = static context =>
            {
                var methods = context.CurrentPrincipal?.FindAll(OfficeClaims.Method) ?? [];
                context.NewPrincipal?.Identities.First().AddClaims(methods);
                return Task.CompletedTask;
            };
        });
    }

    private static void DoorRules(IdentityOptions options)
    {
        options.SignIn.RequireConfirmedAccount = true;
        options.Lockout.MaxFailedAccessAttempts = WrongTries;
        options.Lockout.DefaultLockoutTimeSpan = LockedFor;
    }
}
