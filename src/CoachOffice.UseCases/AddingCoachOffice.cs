using System.Reflection;
using CoachOffice.Data;
using CoachOffice.Data.Access;
using CoachOffice.Domain;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.UseCases.Media;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.UseCases.Safekeeping;
using CoachOffice.UseCases.Students.Imports;
using CoachOffice.UseCases.Watching;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using NodaTime;

namespace CoachOffice.UseCases;

/// <summary>The only wiring of the office: whoever hosts it (pages, command line, tests) calls this once.</summary>
public static class AddingCoachOffice
{
    /// <summary>Database, accounts, clock, ids and every operation. Register a <see cref="TimeProvider"/>, <see cref="INewIds"/> or <see cref="DataFolder"/> before to replace it.</summary>
    public static IServiceCollection AddCoachOffice(this IServiceCollection services, IConfiguration configuration)
    {
        var folder = GivenFolder(services) ?? DataFolder.Find();
        services.AddOfficeDb(OfficeDatabase.From(configuration, folder), folder);
        services.TryAddSingleton(TimeProvider.System);
        services.TryAddSingleton<IClock, MillisecondClock>();
        services.TryAddSingleton<INewIds, TimeOrderedIds>();
        services.TryAddScoped<PracticeClock>();
        services.TryAddSingleton<KeptPractice>();
        services.TryAddSingleton<KeptDrafts>();
        services.TryAddSingleton<NotedPlans>();
        services.TryAddSingleton<KeptHistories>();
        services.TryAddSingleton<KeptCalendars>();
        services.TryAddSingleton(ShippedRules.Find());
        services.TryAddSingleton<Rulebooks>();
        services.TryAddSingleton<Replays>();
        services.TryAddSingleton<BookShelf>();
        services.TryAddSingleton<StandingAnomalies>();
        services.TryAddSingleton<DeviceFileStore>();
        services.TryAddSingleton<StudentFileStore>();
        services.TryAddSingleton<ImportRuns>();
        services.AddWatching();
        services.AddDataProtection().SetApplicationName("CoachOffice").PersistKeysToDbContext<OfficeDb>();
        AddAccounts(services);
        services.AddMail(configuration);
        services.AddMedia(configuration);
        services.AddSafekeeping(configuration);
        foreach (var operation in Operations()) services.TryAddScoped(operation);
        return services;
    }

    /// <summary>Passwords as NIST SP 800-63B-4 asks: length, no composition rules. Cookies are the pages' own affair.</summary>
    private static void AddAccounts(IServiceCollection services) =>
        services.AddIdentityCore<Account>(options =>
        {
            options.Password.RequiredLength = 15;
            options.Password.RequireDigit = options.Password.RequireLowercase = false;
            options.Password.RequireUppercase = options.Password.RequireNonAlphanumeric = false;
            options.Password.RequiredUniqueChars = 5;
            options.User.RequireUniqueEmail = true;
            options.Lockout.MaxFailedAccessAttempts = 10;
        }).AddEntityFrameworkStores<OfficeDb>().AddPasswordValidator<PlainPasswords>().AddDefaultTokenProviders();

    private static DataFolder? GivenFolder(IServiceCollection services) =>
        services.LastOrDefault(s => s.ServiceType == typeof(DataFolder))?.ImplementationInstance as DataFolder;

    /// <summary>Every sealed class of a feature folder that can be made from the container alone.</summary>
    private static IEnumerable<Type> Operations() =>
        typeof(AddingCoachOffice).Assembly.GetExportedTypes().Where(type =>
            type is { IsClass: true, IsSealed: true, IsAbstract: false, IsNested: false }
            && type.Namespace!.StartsWith("CoachOffice.UseCases.", StringComparison.Ordinal)
            && !IsData(type) && type.GetConstructors() is [var only] && only.GetParameters().Length > 0);

    /// <summary>Records are what operations take and give, not operations.</summary>
    private static bool IsData(Type type) =>
        type.GetMethod("<Clone>$", BindingFlags.Public | BindingFlags.Instance) is not null;
}
