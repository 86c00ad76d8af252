using System.Diagnostics;
using OpenTelemetry;

namespace CoachOffice.Web.Shell.Watching;

/// <summary>Leaves of a span only what can be no secret and no person: method, status, the route as it is written in the program, kind of failure. Paths, queries, addresses of visitors and their browsers go.</summary>
internal sealed class SpanWords : BaseProcessor<Activity>
{
    private static readonly HashSet<string> Kept = new(StringComparer.Ordinal) { "http.request.method", "http.response.status_code", "http.route", "url.scheme", "network.protocol.version", "error.type", "outcome", "job" };

    public override void OnEnd(Activity data)
    {
        ArgumentNullException.ThrowIfNull(data);
        foreach (var (name, _) in data.TagObjects.ToList())
        {
            if (!Kept.Contains(name)) data.SetTag(name, null);
        }

        if (data.GetTagItem("http.request.method") is { } method) data.DisplayName = $"{method} {data.GetTagItem("http.route") ?? "-"}";

        // Words of a failure are for the log of the machine.
        if (data.StatusDescription is not null) data.SetStatus(data.Status);
        data.TraceStateString = null;
    }
}
