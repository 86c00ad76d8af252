using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests;

/// <summary>The whole office in memory, as on a fresh machine: Production, an empty data folder of its own, no mail server.</summary>
public sealed class OfficeHost : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("coachoffice-web-");

    /// <summary>Settings on top, set before the first request.</summary>
    public Dictionary<string, string> Settings { get; } = new(StringComparer.Ordinal)
    {
        ["Office:RateLimits:SignIn"] = "10000",
        ["Office:RateLimits:Links"] = "10000",
        // Tests sweep when they want to.
        ["Office:Clock:Enabled"] = "false",
    };

    /// <summary>Where this office keeps its files.</summary>
    public string DataFolder => _data.FullName;

    /// <summary>A browser of a stranger that follows no redirect.</summary>
    public HttpClient Stranger() => CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });

    /// <summary>Parts of the program a test puts beside the office's own.</summary>
    public Action<IServiceCollection>? More { get; set; }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("COACHOFFICE_DATA", _data.FullName);
        foreach (var (key, value) in Settings) builder.UseSetting(key, value);
        if (More is { } more) builder.ConfigureServices(more);
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        // The factory disposes itself twice.
        if (disposing && Directory.Exists(_data.FullName)) _data.Delete(recursive: true);
    }
}
