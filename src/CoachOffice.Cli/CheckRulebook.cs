using System.CommandLine;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Coverage;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Cli;

/// <summary><c>check-rulebook [--rules DIR] [--own FILE] [--coverage]</c>: reads the rulebook, runs its worked cases, looks for what its entries make of each other, and says how much it holds and by which hash it goes; with --coverage also what every kind of student gets for every fault.</summary>
internal static class CheckRulebook
{
    public static Command Command(Report report)
    {
        var rules = RulesDirectory.Option();
        var own = RulesDirectory.OwnOption();
        var coverage = new Option<bool>("--coverage") { Description = "Also go through every fault, room, kit, limit and level, and print what is offered, what is not, and why." };
        var command = new Command("check-rulebook", "Reads a rulebook and names every fault in it, or says what it holds.") { rules, own, coverage };
        command.SetAction(parsed => Run(parsed.GetValue(rules), parsed.GetValue(own), parsed.GetValue(coverage), report));
        return command;
    }

    private static int Run(string? rules, FileInfo? own, bool coverage, Report report)
    {
        if (RulesDirectory.Load(rules, report, own) is not { } loaded) return ExitCode.Refused;
        var failures = CaseRun.Failures(CompiledRulebook.Compile(loaded));
        if (failures.Count > 0) return report.Refuse(failures.Select(fault => RulesDirectory.Named(fault, rules, own)));
        var anomalies = RuleBaseCheck.Of(loaded);
        var refused = anomalies.Any(a => a.Severity == AnomalySeverity.Refuse);
        if (!refused) report.Write(Summary(loaded) + "\n");
        foreach (var anomaly in anomalies) Tell(anomaly with { Entries = [.. anomaly.Entries.Select(e => RulesDirectory.Named(e, rules, own))] }, report);
        if (refused) return ExitCode.Refused;
        return coverage ? Coverage(loaded, report) : ExitCode.Done;
    }

    /// <summary>A line for the anomaly and, where a lesson shows it, a line with the smallest such lesson for the draft command.</summary>
    private static void Tell(Anomaly anomaly, Report report)
    {
        report.Error(anomaly.ToString());
        if (anomaly.ExampleJson is { } example) report.Error($"  smallest lesson: {example}");
    }

    /// <summary>The table goes out either way; a hole in it refuses the rulebook.</summary>
    private static int Coverage(LoadedRulebook loaded, Report report)
    {
        var all = RulebookCoverage.Of(loaded.Book).ToList();
        report.Write("\n" + CoverageText.Write(all));
        return all.Any(work => work.IsHole) ? ExitCode.Refused : ExitCode.Done;
    }

    private static string Summary(LoadedRulebook loaded)
    {
        var book = loaded.Book;
        return $"{book.Measures.Count} measures, {book.Patterns.Count} patterns, {book.Drills.Count} drills, {book.Progressions.Count} progressions, sha256 {loaded.Sha256}";
    }
}
