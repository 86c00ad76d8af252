using CoachOffice.UseCases.Watching;
using OpenTelemetry.Exporter;
using OpenTelemetry.Metrics;
using OpenTelemetry.Resources;
using OpenTelemetry.Trace;

namespace CoachOffice.Web.Shell.Watching;

/// <summary>
/// Metrics and traces for a collector that speaks OTLP, off until the setting <c>Office:Telemetry:Endpoint</c> names one. What goes out is picked by
/// <see cref="SpanWords"/> and by the instruments' own closed tags: no name, address or private link is ever among it.
/// </summary>
internal static class TelemetrySetup
{
    // Not the database driver's own: its pools are named by the connection string.
    private static readonly string[] Meters = [OfficeMeter.Name, "Microsoft.AspNetCore.Hosting", "Microsoft.AspNetCore.Server.Kestrel", "Microsoft.AspNetCore.RateLimiting", "System.Runtime"];

    public static bool IsOn(IConfiguration configuration) => !string.IsNullOrWhiteSpace(Endpoint(configuration));

    public static void AddTelemetry(this WebApplicationBuilder builder)
    {
        if (!IsOn(builder.Configuration)) return;
        var to = new Uri(Endpoint(builder.Configuration)!);
        var http = string.Equals(builder.Configuration["Office:Telemetry:Protocol"], "http", StringComparison.OrdinalIgnoreCase);
        builder.Services.AddOpenTelemetry()
            .ConfigureResource(static resource => resource.AddService("coachoffice", serviceVersion: typeof(TelemetrySetup).Assembly.GetName().Version?.ToString(), autoGenerateServiceInstanceId: true))
            .WithMetrics(metrics => metrics.AddMeter(Meters).AddOtlpExporter(exporter => Send(exporter, to, http, "v1/metrics")))
            .WithTracing(tracing => tracing.AddSource(OfficeMeter.Name)
                .AddAspNetCoreInstrumentation(static http => http.Filter = static context => !context.Request.Path.StartsWithSegments(Security.AnonymousPages.Health, StringComparison.OrdinalIgnoreCase))
                .AddProcessor(new SpanWords())
                .AddOtlpExporter(exporter => Send(exporter, to, http, "v1/traces")));
    }

    private static string? Endpoint(IConfiguration configuration) => configuration["Office:Telemetry:Endpoint"];

    private static void Send(OtlpExporterOptions exporter, Uri to, bool http, string path)
    {
        exporter.Protocol = http ? OtlpExportProtocol.HttpProtobuf : OtlpExportProtocol.Grpc;
        exporter.Endpoint = http ? new Uri($"{to.ToString().TrimEnd('/')}/{path}") : to;
    }
}
