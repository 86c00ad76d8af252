using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace CoachOffice.UseCases.Watching;

/// <summary>Instruments and logs, whether or not anybody reads them.</summary>
internal static class WatchingWiring
{
    public static void AddWatching(this IServiceCollection services)
    {
        services.AddLogging();
        services.AddMetrics();
        services.TryAddSingleton<OfficeMeter>();
    }
}
