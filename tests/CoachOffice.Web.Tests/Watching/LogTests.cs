using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CoachOffice.Web.Tests.Watching;

public sealed class LogTests : IDisposable
{
    private readonly OfficeHost _office = new();
    private readonly KeptLog _log = new();

    public LogTests() => _office.More = services => services.AddSingleton<ILoggerProvider>(_log);

    public void Dispose()
    {
        _office.Dispose();
        _log.Dispose();
    }

    [Fact]
    public async Task The_log_of_a_day_names_nobody_and_carries_no_private_link()
    {
        var day = new ADay(_office);

        await day.Passes();
        _office.Services.GetRequiredService<ILoggerFactory>().CreateLogger("CoachOffice.Test").LogInformation("The log is kept.");

        var lines = _log.Lines;
        Assert.Contains(lines, l => l.Contains("The log is kept.", StringComparison.Ordinal));
        Assert.All(day.Private, secret => Assert.DoesNotContain(lines, l => l.Contains(secret, StringComparison.OrdinalIgnoreCase)));
    }

    [Fact]
    public async Task With_a_setting_every_line_is_one_object_for_programs()
    {
        _office.Settings["Office:Log:Json"] = "true";
        await new Visitor(_office).Open("/first-run");

        var format = _office.Services.GetRequiredService<Microsoft.Extensions.Options.IOptions<Microsoft.Extensions.Logging.Console.ConsoleLoggerOptions>>().Value.FormatterName;
        var json = _office.Services.GetRequiredService<Microsoft.Extensions.Options.IOptionsMonitor<Microsoft.Extensions.Logging.Console.JsonConsoleFormatterOptions>>().CurrentValue;

        // Scopes hold the path of the request, and with it private links.
        Assert.Equal(("json", false, true), (format, json.IncludeScopes, json.UseUtcTimestamp));
    }
}
