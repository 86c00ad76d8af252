using CoachOffice.UseCases.FollowUps;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Time.Testing;
using MimeKit;

namespace CoachOffice.Browser.Tests;

/// <summary>The whole program on a real port, with a data folder of its own and a clock the test moves.</summary>
public sealed class RunningOffice : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo _folder;
    private readonly bool _isLast;

    public RunningOffice()
        : this(Directory.CreateTempSubdirectory("coachoffice-browser-"), 0, isLast: true)
    {
    }

    private RunningOffice(DirectoryInfo folder, int port, bool isLast)
    {
        (_folder, _isLast) = (folder, isLast);
        UseKestrel(port);
    }

    /// <summary>An office that can be stopped and started again: the same folder, on this port; the last one takes the folder with it.</summary>
    public static RunningOffice At(DirectoryInfo folder, int port, bool isLast) => new(folder, port, isLast);

    /// <summary>The office's clock; starts on a Monday morning.</summary>
    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 5, 4, 9, 0, 0, TimeSpan.Zero));

    /// <summary>Address of the running program, without a trailing slash.</summary>
    public string Url
    {
        get
        {
            StartServer();
            return ClientOptions.BaseAddress.ToString().TrimEnd('/');
        }
    }

    /// <summary>What the minutely job does.</summary>
    public async Task Sweep()
    {
        await using var scope = Services.CreateAsyncScope();
        await scope.ServiceProvider.GetRequiredService<SweepMessages>().Once(CancellationToken.None);
    }

    /// <summary>Time passes, and the clock's job runs as it does every minute.</summary>
    public async Task Pass(TimeSpan time)
    {
        Clock.Advance(time);
        await Sweep();
    }

    /// <summary>Every letter in the mail folder, oldest first.</summary>
    public async Task<IReadOnlyList<MimeMessage>> Letters()
    {
        var folder = Path.Combine(_folder.FullName, "mail");
        if (!Directory.Exists(folder)) return [];
        var letters = new List<MimeMessage>();
        foreach (var path in Directory.EnumerateFiles(folder, "*.eml")) letters.Add(await MimeMessage.LoadAsync(path));
        return [.. letters.OrderBy(l => l.Date)];
    }

    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        if (_isLast && Directory.Exists(_folder.FullName)) _folder.Delete(true);
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.UseEnvironment("Production");
        builder.UseSetting("COACHOFFICE_DATA", _folder.FullName);

        // The test is the clock here: the real minute must not take a letter before the test looks.
        builder.UseSetting("Office:Clock:Enabled", "false");
        builder.ConfigureServices(services =>
        {
            services.RemoveAll<TimeProvider>();
            services.AddSingleton<TimeProvider>(Clock);
        });
    }
}
