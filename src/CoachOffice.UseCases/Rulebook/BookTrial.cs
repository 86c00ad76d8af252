using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Reads a book that somebody wants to have, runs its worked cases and checks it as a whole before it may serve. One that was tried before need not be again: whoever puts changes into force has had them tried while typing.</summary>
public sealed class BookTrial(BookShelf shelf)
{
    /// <summary>The first shipped book the own files fit is taken; when they fit none, the faults with the last are told.</summary>
    public TriedBook Of(IReadOnlyList<ShippedBase> bases, IReadOnlyList<KeyValuePair<string, string>> own)
    {
        ArgumentNullException.ThrowIfNull(bases);
        var tried = new TriedBook { Faults = [], Warnings = [] };
        foreach (var shipped in bases)
        {
            tried = On(shipped, own);
            if (tried.Faults.Count == 0) break;
        }

        return tried;
    }

    /// <summary>The own files on one shipped book.</summary>
    public TriedBook On(ShippedBase shipped, IReadOnlyList<KeyValuePair<string, string>> own)
    {
        ArgumentNullException.ThrowIfNull(shipped);
        ArgumentNullException.ThrowIfNull(own);
        return shelf.Tried($"{shipped.Sha256} {string.Concat(own.Select(f => $"{f.Key} {f.Value.Length} {f.Value}"))}", () => Trial(shipped, own));
    }

    private TriedBook Trial(ShippedBase shipped, IReadOnlyList<KeyValuePair<string, string>> own)
    {
        var read = shelf.Read(shipped.Files.With(own));
        if (!read.TryGet(out var loaded)) return new TriedBook { Faults = read.Faults, Warnings = read.Warnings };
        var compiled = shelf.Compile(loaded);
        var failed = CaseRun.Failures(compiled);
        if (failed.Count > 0) return new TriedBook { Faults = failed, Warnings = read.Warnings };
        var anomalies = shelf.Check(compiled);
        if (anomalies.Any(a => a.Severity == AnomalySeverity.Refuse)) return new TriedBook { Faults = [.. anomalies.Where(a => a.Severity == AnomalySeverity.Refuse).Select(Told)], Warnings = read.Warnings };
        return new TriedBook { Faults = [], Warnings = read.Warnings, Anomalies = anomalies, Shipped = shipped, Compiled = compiled.ReadFrom(Canonical(shipped, loaded)) };
    }

    // Rules that are each right and together senseless are told like any fault, where the first of them stands.
    private static Fault Told(Anomaly anomaly) =>
        new(anomaly.Entries[0].File ?? "rulebook.yaml", anomaly.Entries[0].Line ?? 1, 1, anomaly.Field, $"{anomaly.Name}: {string.Join(", ", anomaly.Entries.Select(e => e.Id))}: {anomaly.Sentence}.{(anomaly.ExampleText is { } example ? $" The smallest lesson that shows it: {example}." : "")}");

    // Kept in its one form; that it says the very same is checked, as all plans to come are drafted by it.
    private LoadedRulebook Canonical(ShippedBase shipped, LoadedRulebook loaded)
    {
        var read = shelf.Read(shipped.Files.With(StandingBooks.OwnOf(OwnFiles.AsOne(loaded))));
        return read.TryGet(out var same) && same.Sha256 == loaded.Sha256
            ? same
            : throw new InvalidOperationException($"The rulebook written in its canonical form says something else: {(read.Succeeded ? read.Value.Sha256 : read.Faults[0])}");
    }
}
