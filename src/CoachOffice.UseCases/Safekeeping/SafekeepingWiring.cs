using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace CoachOffice.UseCases.Safekeeping;

/// <summary>When and where backups are made.</summary>
internal static class SafekeepingWiring
{
    public static void AddSafekeeping(this IServiceCollection services, IConfiguration configuration)
    {
        services.TryAddSingleton(configuration.GetSection("Office:Backup").Get<BackupSettings>() ?? new BackupSettings());
        services.TryAddSingleton<BackupPlace>();
        services.TryAddSingleton<BackupRuns>();
    }
}
