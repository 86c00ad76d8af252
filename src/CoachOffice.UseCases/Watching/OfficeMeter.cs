using System.Diagnostics;
using System.Diagnostics.Metrics;
using CoachOffice.Domain;
using CoachOffice.Domain.Safekeeping;
using CoachOffice.UseCases.FollowUps;

namespace CoachOffice.UseCases.Watching;

/// <summary>What the office can be watched by from outside: counts, ages and durations. No value and no tag names a person, a student's record or an address; tags are words from closed lists.</summary>
public sealed class OfficeMeter : IDisposable
{
    /// <summary>Name of the meter and of the source of spans.</summary>
    public const string Name = "CoachOffice";

    private readonly ActivitySource _source = new(Name);
    private readonly Counter<long> _messages;
    private readonly Histogram<double> _jobs;
    private readonly Counter<long> _deeds;
    private readonly Counter<long> _backups;
    private OfficeReading _latest = OfficeReading.None;

    public OfficeMeter(IMeterFactory meters)
    {
        ArgumentNullException.ThrowIfNull(meters);
        var meter = meters.Create(Name);
        _messages = meter.CreateCounter<long>("office.messages", "{message}", "What sweeps did, by outcome.");
        _jobs = meter.CreateHistogram<double>("office.job.duration", "s", "How long a job of the clock took, by job and outcome.");
        _deeds = meter.CreateCounter<long>("office.deeds", "{deed}", "What was done, by the word it has in the histories; plan-drafted counts drafts.");
        _backups = meter.CreateCounter<long>("office.backups", "{backup}", "Backups, by outcome.");
        meter.CreateObservableGauge("office.messages.due", () => Values(_latest.Due), "{message}", "Messages whose time has come and that have not gone.");
        meter.CreateObservableGauge("office.messages.oldest_due", () => Values(_latest.OldestDueSeconds), "s", "How long the one due longest has waited.");
        meter.CreateObservableGauge("office.messages.unknown", () => Values(_latest.Unknown), "{message}", "Messages that may have arrived; a person decides.");
        meter.CreateObservableGauge("office.messages.attention", () => Values(_latest.Attention), "{message}", "Messages that could not go; a person has to look.");
        meter.CreateObservableGauge("office.backup.age", () => Values(_latest.BackupAgeSeconds), "s", "Age of the last backup that was brought back and found the same.");
    }

    /// <summary>Runs a job of the clock as a span with its duration.</summary>
    public async Task<T> Job<T>(string job, Func<Task<T>> act)
    {
        ArgumentNullException.ThrowIfNull(act);
        using var span = _source.StartActivity(job);
        var began = Stopwatch.GetTimestamp();
        var done = false;
        try
        {
            var result = await act();
            done = true;
            return result;
        }
        finally
        {
            if (!done) span?.SetStatus(ActivityStatusCode.Error);
            _jobs.Record(Stopwatch.GetElapsedTime(began).TotalSeconds, Tag("job", job), Tag("outcome", done ? "done" : "failed"));
        }
    }

    /// <summary>What a sweep did.</summary>
    public void Swept(SweepResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        (string Outcome, int Count)[] counts = [("sent", result.Sent), ("put-off", result.PutOff), ("skipped", result.Skipped), ("tried-again-later", result.TriedAgainLater), ("needs-attention", result.NeedAttention)];
        foreach (var (outcome, count) in counts.Where(c => c.Count > 0)) _messages.Add(count, Tag("outcome", outcome));
    }

    /// <summary>What came of a backup.</summary>
    public void BackedUp(SafetyCopyState state) => _backups.Add(1, Tag("outcome", Terms.Of(state)));

    /// <summary>A deed of the histories.</summary>
    public void Did(string action) => _deeds.Add(1, Tag("deed", action));

    /// <summary>How things stand, for the gauges.</summary>
    public void Stands(OfficeReading reading) => Volatile.Write(ref _latest, reading);

    public void Dispose() => _source.Dispose();

    private static IEnumerable<Measurement<double>> Values(double? value) => value is { } known ? [new Measurement<double>(known)] : [];

    private static KeyValuePair<string, object?> Tag(string name, string value) => new(name, value);
}
