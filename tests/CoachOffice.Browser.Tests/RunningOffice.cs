using CoachOffice.Data;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Time.Testing;

namespace CoachOffice.Browser.Tests;

/// <summary>The whole program on a real port, with a data folder of its own and a clock the test moves.</summary>
public sealed class RunningOffice : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("coachoffice-browser-");

    public RunningOffice()
    {
        UseKestrel(0);
    }

    /// <summary>The office's clock; starts on a Monday morning.</summary>
    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 5, 4, 9, 0, 0, TimeSpan.Zero));

    /// <summary>Where mail that was sent lies as files.</summary>
    public string MailFolder => Path.Combine(_folder.FullName, "mail");

    /// <summary>Address of the running program, without a trailing slash.</summary>
    public string Url
    {
        get
        {
            StartServer();
            return ClientOptions.BaseAddress.ToString().TrimEnd('/');
        }
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.ConfigureServices(services =>
        {
            services.RemoveAll<TimeProvider>();
            services.AddSingleton<TimeProvider>(Clock);
        });
    }

    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        _folder.Delete(true);
    }
}
