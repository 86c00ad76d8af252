using System.Diagnostics;
using CoachOffice.Web.Shell.Watching;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using OpenTelemetry.Metrics;
using OpenTelemetry.Trace;

namespace CoachOffice.Web.Tests.Watching;

public sealed class TelemetryTests : IDisposable
{
    private readonly OfficeHost _office = new();
    private readonly List<Activity> _spans = [];
    private readonly List<Metric> _metrics = [];

    public void Dispose() => _office.Dispose();

    [Fact]
    public async Task What_goes_out_names_nobody_and_carries_no_private_link()
    {
        Watched();
        var day = new ADay(_office);

        await day.Passes();
        _office.Services.GetRequiredService<MeterProvider>().ForceFlush();

        var words = Words();
        Assert.Contains(words, w => w == "GET p/{token}/{note?}");
        Assert.Contains(words, w => w == "sweep");
        Assert.All(day.Private, secret => Assert.DoesNotContain(words, w => w.Contains(secret, StringComparison.OrdinalIgnoreCase)));
        Assert.DoesNotContain(words, w => w.Contains("127.0.0.1", StringComparison.Ordinal) || w.Contains("localhost", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_office_can_be_watched_by_what_is_due_sent_drafted_and_kept_safe()
    {
        Watched();

        await new ADay(_office).Passes();
        _office.Services.GetRequiredService<MeterProvider>().ForceFlush();

        Assert.True(Sum("office.messages", "sent") >= 1);
        Assert.True(Sum("office.deeds", "plan-approved") >= 1);
        Assert.True(Sum("office.deeds", "plan-drafted") >= 1);
        Assert.True(Sum("office.backups", "proved") >= 1);
        Assert.All((string[])["office.job.duration", "office.messages.due", "office.messages.oldest_due", "office.messages.unknown", "office.messages.attention", "office.backup.age", "http.server.request.duration"], name => Assert.Contains(_metrics, m => m.Name == name));
    }

    [Fact]
    public async Task Nothing_is_gathered_until_somebody_names_a_collector()
    {
        await new Visitor(_office).Open("/first-run");

        Assert.Null(_office.Services.GetService<MeterProvider>());
        Assert.Null(_office.Services.GetService<TracerProvider>());
        Assert.False(TelemetrySetup.IsOn(new ConfigurationBuilder().Build()));
    }

    private void Watched()
    {
        // Nobody listens there: what is looked at goes to the lists beside.
        _office.Settings["Office:Telemetry:Endpoint"] = "http://127.0.0.1:9";
        _office.More = services => services
            .ConfigureOpenTelemetryTracerProvider((_, traces) => traces.AddInMemoryExporter(_spans))
            .ConfigureOpenTelemetryMeterProvider((_, metrics) => metrics.AddInMemoryExporter(_metrics));
    }

    private List<string> Words()
    {
        var words = new List<string>();
        foreach (var span in _spans.ToList())
        {
            words.AddRange([span.DisplayName, span.StatusDescription ?? "", span.TraceStateString ?? ""]);
            words.AddRange(span.TagObjects.Concat(span.Events.SelectMany(e => e.Tags)).Select(t => $"{t.Value}"));
        }

        foreach (var point in Points()) words.AddRange(point.Tags.Select(t => $"{t.Key}={t.Value}"));
        return words;
    }

    private double Sum(string name, string word) =>
        Points(name).Where(p => p.Tags.Any(t => Equals(t.Value, word))).Sum(p => p.Value);

    private List<(List<KeyValuePair<string, object?>> Tags, double Value)> Points(string? name = null)
    {
        var points = new List<(List<KeyValuePair<string, object?>> Tags, double Value)>();
        foreach (var metric in _metrics.Where(m => name is null || m.Name == name))
        {
            foreach (ref readonly var point in metric.GetMetricPoints())
            {
                var tags = new List<KeyValuePair<string, object?>>();
                foreach (var tag in point.Tags) tags.Add(tag);
                points.Add((tags, metric.MetricType == MetricType.LongSum ? point.GetSumLong() : 0));
            }
        }

        return points;
    }
}
