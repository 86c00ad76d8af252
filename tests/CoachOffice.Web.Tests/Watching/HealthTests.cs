using System.Net;
using CoachOffice.Data;
using CoachOffice.Web.Shell.Starting;
using CoachOffice.Web.Shell.Watching;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging.Abstractions;

namespace CoachOffice.Web.Tests.Watching;

public sealed class HealthTests : IDisposable
{
    private readonly OfficeHost _office = new();

    public void Dispose() => _office.Dispose();

    [Theory]
    [InlineData("/health")]
    [InlineData("/health/live")]
    [InlineData("/health/ready")]
    public async Task A_sound_office_says_one_word_to_anybody(string address)
    {
        await Started();

        using var answer = await _office.Stranger().GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.Equal((HttpStatusCode.OK, "Healthy"), (answer.StatusCode, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)));
        Assert.Equal("no-store, no-cache", answer.Headers.CacheControl?.ToString());
    }

    [Theory]
    [InlineData("INSERT INTO \"__EFMigrationsHistory\" (\"MigrationId\", \"ProductVersion\") VALUES ('29990101000000_FromTomorrow', '99.0')")]
    [InlineData("DELETE FROM \"__EFMigrationsHistory\"")]
    [InlineData("DELETE FROM \"BooksInForce\"")]
    public async Task No_visitors_are_sent_where_the_database_is_anothers_or_no_rulebook_is_in_force(string sql)
    {
        await Started();
        await using (var scope = _office.Services.CreateAsyncScope()) await scope.ServiceProvider.GetRequiredService<OfficeDb>().Database.ExecuteSqlRawAsync(sql, TestContext.Current.CancellationToken);

        Assert.Equal((HttpStatusCode.ServiceUnavailable, "Unhealthy"), await Asks("/health/ready"));
        Assert.Equal((HttpStatusCode.OK, "Healthy"), await Asks("/health/live"));
    }

    [Fact]
    public async Task A_node_that_is_about_to_stop_takes_no_more_visitors()
    {
        await Started();
        var (scopes, time) = (_office.Services.GetRequiredService<IServiceScopeFactory>(), _office.Services.GetRequiredService<TimeProvider>());
        using var life = new Ending();
        var parts = new ReadyParts(_office.Services.GetRequiredService<ShippedBookStart>(), DataFolder.At(_office.DataFolder), life, _office.Services);
        using var ready = new Readiness(scopes, parts, time, NullLogger<Readiness>.Instance);
        Assert.Equal(HealthStatus.Healthy, (await ready.CheckHealthAsync(new(), TestContext.Current.CancellationToken)).Status);

        life.StopApplication();

        Assert.Equal(HealthStatus.Unhealthy, (await ready.CheckHealthAsync(new(), TestContext.Current.CancellationToken)).Status);
    }

    [Fact]
    public async Task A_folder_that_takes_no_file_takes_no_visitors()
    {
        await Started();
        Directory.CreateDirectory(Path.Combine(_office.DataFolder, $".ready-{Environment.ProcessId}"));

        Assert.Equal((HttpStatusCode.ServiceUnavailable, "Unhealthy"), await Asks("/health/ready"));
    }

    /// <summary>A program's life that a test ends.</summary>
    private sealed class Ending : IHostApplicationLifetime, IDisposable
    {
        private readonly CancellationTokenSource _end = new();

        public CancellationToken ApplicationStarted => CancellationToken.None;

        public CancellationToken ApplicationStopping => _end.Token;

        public CancellationToken ApplicationStopped => CancellationToken.None;

        public void StopApplication() => _end.Cancel();

        public void Dispose() => _end.Dispose();
    }

    private async Task Started()
    {
        await new Visitor(_office).Open("/first-run");
        await _office.Services.GetRequiredService<ShippedBookStart>().Settled;
    }

    private async Task<(HttpStatusCode, string)> Asks(string address)
    {
        using var answer = await _office.Stranger().GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }
}
