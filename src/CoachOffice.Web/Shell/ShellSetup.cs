using System.Globalization;
using CoachOffice.Data;
using CoachOffice.UseCases;
using CoachOffice.Web.Features.Bookings;
using CoachOffice.Web.Features.Bookings.Private;
using CoachOffice.Web.Features.Lessons;
using CoachOffice.Web.Features.Plans;
using CoachOffice.Web.Features.Plans.Private;
using CoachOffice.Web.Shell.Clock;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Starting;
using CoachOffice.Web.Shell.Watching;
using Microsoft.AspNetCore.ResponseCompression;

namespace CoachOffice.Web.Shell;

/// <summary>Everything technical the pages stand on.</summary>
internal static class ShellSetup
{
    /// <summary>Where the office listens when nobody says otherwise (setting <c>Urls</c>, <c>ASPNETCORE_URLS</c> or <c>--urls</c>).</summary>
    public const string DefaultAddress = "http://localhost:5180";

    private const long LargestBody = 2 * 1024 * 1024;

    public static void AddShell(this WebApplicationBuilder builder, string[] args)
    {
        // Also an ordinary setting, so that each test has a folder of its own.
        var folder = builder.Configuration[DataFolder.Variable] is { Length: > 0 } named ? DataFolder.At(named) : DataFolder.Find();
        builder.Configuration.AddOfficeSettings(folder, args);
        Listen(builder);
        KeepLogShort(builder.Logging);
        builder.WriteLogForPrograms();
        var services = builder.Services;
        services.AddSingleton(folder);
        services.AddCoachOffice(builder.Configuration);
        services.AddCompression();
        services.AddPages();
        services.AddShellSecurity(builder.Configuration);
        services.AddRateLimits(builder.Configuration);
        services.AddHealth();
        services.AddLinkDoor(builder.Configuration);
        services.AddVisitDoor(builder.Configuration);
        services.AddLessonPages();
        services.AddSingleton<Features.Students.Charts.KeptDrawings>();
        services.AddPlanPages();
        services.AddBookingPages();
        services.AddSingleton<FirstAnswer>();
        services.AddSingleton<ShippedBookStart>();
        services.AddHostedService(static provider => provider.GetRequiredService<ShippedBookStart>());
        builder.AddClock();
        builder.AddTelemetry();
    }

    private static void Listen(WebApplicationBuilder builder)
    {
        // Every machine writes and reads the same text, whatever its regional settings.
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;

        // `dotnet run` without a launch profile is Production, where files of the build are otherwise answered empty.
        builder.WebHost.UseStaticWebAssets();
        if (string.IsNullOrEmpty(builder.Configuration[WebHostDefaults.ServerUrlsKey])) builder.WebHost.UseUrls(DefaultAddress);
        builder.WebHost.ConfigureKestrel(static kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = LargestBody;
            kestrel.Limits.MaxRequestHeadersTotalSize = 16 * 1024;
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(15);
        });
    }

    /// <summary>The log says what a person must know; a request or query a line would also write down addresses.</summary>
    private static void KeepLogShort(ILoggingBuilder logging) => logging
        .AddFilter("Microsoft", LogLevel.Warning)
        .AddFilter("Hangfire", LogLevel.Warning)
        .AddFilter("Microsoft.Hosting.Lifetime", LogLevel.Information)
        // What fails below is thrown, and told once by whoever answers for it.
        .AddFilter("Microsoft.EntityFrameworkCore", LogLevel.Critical)
        .AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.Critical)
        // The keys lie in our own database, in a folder only the owner may read; there is no operating system's vault to name.
        .AddFilter("Microsoft.AspNetCore.DataProtection.KeyManagement.XmlKeyManager", LogLevel.Error);

    private static void AddCompression(this IServiceCollection services) =>
        services.AddResponseCompression(static options =>
        {
            options.EnableForHttps = true;
            options.MimeTypes = [.. ResponseCompressionDefaults.MimeTypes, "image/svg+xml"];
        });

    private static void AddPages(this IServiceCollection services)
    {
        services.AddRouting(static options => options.LowercaseUrls = true);
        services.AddRazorPages(static options =>
            {
                options.RootDirectory = "/Features";
                AnonymousPages.Allow(options.Conventions);
            })
            .AddMvcOptions(static options =>
            {
                options.Filters.Add<FormExpiredFilter>();
                options.Filters.Add<NoHandlerFilter>();
                options.Filters.Add<KeepableTextFilter>();
                options.Filters.Add<OneConnection>();
            });
        services.AddRazorComponents();
    }
}
