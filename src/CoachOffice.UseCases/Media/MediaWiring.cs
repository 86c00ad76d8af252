using CoachOffice.Data.Media;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace CoachOffice.UseCases.Media;

/// <summary>Where stills and clips lie, and how much of them.</summary>
internal static class MediaWiring
{
    public static void AddMedia(this IServiceCollection services, IConfiguration configuration)
    {
        services.TryAddSingleton(configuration.GetSection("Office:Media").Get<MediaSettings>() ?? new MediaSettings());
        services.TryAddSingleton<MediaFolder>();
        services.TryAddSingleton<ClipArrivals>();
    }
}
