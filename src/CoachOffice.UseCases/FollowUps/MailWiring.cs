using CoachOffice.UseCases.FollowUps.Bounces;
using CoachOffice.UseCases.FollowUps.ByTime;
using CoachOffice.UseCases.FollowUps.Texts;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>How mail leaves this office.</summary>
internal static class MailWiring
{
    /// <summary>By SMTP when <c>Office:Mail:Host</c> is set, else as files in the data folder.</summary>
    public static void AddMail(this IServiceCollection services, IConfiguration configuration)
    {
        services.TryAddSingleton(configuration.GetSection("Office:Mail").Get<MailSettings>() ?? new MailSettings());
        services.TryAddSingleton(configuration.GetSection("Office:Mail:Bounces").Get<BounceSettings>() ?? new BounceSettings());
        services.TryAddSingleton<BounceMarks>();
        services.TryAddSingleton(configuration.GetSection("Office:Text").Get<TextSettings>() ?? new TextSettings());
        services.TryAddSingleton<TextDoors>();
        services.TryAddSingleton<Letters>();
        services.TryAddSingleton<MailDoors>();
        services.TryAddSingleton<UnnotedMail>();
        foreach (var family in typeof(IOfficeLetter).Assembly.GetExportedTypes().Where(t => t.IsSealed && t.IsAssignableTo(typeof(IOfficeLetter))))
            services.TryAddEnumerable(ServiceDescriptor.Scoped(typeof(IOfficeLetter), family));
        foreach (var timed in typeof(ITimedMessages).Assembly.GetExportedTypes().Where(t => t.IsSealed && t.IsAssignableTo(typeof(ITimedMessages))))
            services.TryAddEnumerable(ServiceDescriptor.Scoped(typeof(ITimedMessages), timed));
    }
}
