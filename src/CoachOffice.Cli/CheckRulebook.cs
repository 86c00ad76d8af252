using System.CommandLine;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Cli;

/// <summary><c>check-rulebook [--rules DIR]</c>: reads the rulebook, runs its worked cases, looks for what its entries make of each other, and says how much it holds and by which hash it goes.</summary>
internal static class CheckRulebook
{
    public static Command Command(Report report)
    {
        var rules = RulesDirectory.Option();
        var command = new Command("check-rulebook", "Reads a rulebook and names every fault in it, or says what it holds.") { rules };
        command.SetAction(parsed => Run(parsed.GetValue(rules), report));
        return command;
    }

    private static int Run(string? rules, Report report)
    {
        if (RulesDirectory.Load(rules, report) is not { } loaded) return ExitCode.Refused;
        var failures = CaseRun.Failures(CompiledRulebook.Compile(loaded));
        if (failures.Count > 0) return report.Refuse(failures.Select(fault => RulesDirectory.Named(fault, rules)));
        var anomalies = RuleBaseCheck.Of(loaded);
        var refused = anomalies.Any(a => a.Severity == AnomalySeverity.Refuse);
        if (!refused) report.Write(Summary(loaded) + "\n");
        foreach (var anomaly in anomalies) Tell(anomaly, rules, report);
        return refused ? ExitCode.Refused : ExitCode.Done;
    }

    /// <summary>A line for the anomaly and, where a lesson shows it, a line with the smallest such lesson for the draft command.</summary>
    private static void Tell(Anomaly anomaly, string? rules, Report report)
    {
        report.Error((anomaly with { Entries = [.. anomaly.Entries.Select(e => RulesDirectory.Named(e, rules))] }).ToString());
        if (anomaly.ExampleJson is { } example) report.Error($"  smallest lesson: {example}");
    }

    private static string Summary(LoadedRulebook loaded)
    {
        var book = loaded.Book;
        return $"{book.Measures.Count} measures, {book.Patterns.Count} patterns, {book.Drills.Count} drills, {book.Progressions.Count} progressions, sha256 {loaded.Sha256}";
    }
}
