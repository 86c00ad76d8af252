using System.CommandLine;
using System.Text;
using CoachOffice.Drafting.Catalogue;

namespace CoachOffice.Cli;

/// <summary><c>catalogue [--rules DIR] [--check]</c>: writes README.md beside the rules, the whole rulebook for a person; with --check it only says whether that would change it.</summary>
internal static class WriteCatalogue
{
    private const string Here = "rules";
    private const string Page = "README.md";

    public static Command Command(Report report)
    {
        var rules = new Option<string>("--rules") { Description = "Directory of the rulebook's .yaml files.", HelpName = "DIR", DefaultValueFactory = _ => Here };
        var check = new Option<bool>("--check") { Description = "Write nothing; fail when the page is not the one these rules give." };
        var command = new Command("catalogue", "Writes the rulebook as one page for a person, README.md beside the rules.") { rules, check };
        command.SetAction(parsed => Run(parsed.GetValue(rules)!, parsed.GetValue(check), report));
        return command;
    }

    private static int Run(string rules, bool check, Report report)
    {
        if (RulesDirectory.Load(rules, report) is not { } loaded) return ExitCode.Refused;
        var file = Path.Combine(rules, Page);
        var page = Encoding.UTF8.GetBytes(RulebookCatalogue.Write(loaded.Book));
        if (!check) File.WriteAllBytes(file, page);
        else if (!File.Exists(file) || !File.ReadAllBytes(file).AsSpan().SequenceEqual(page))
        {
            report.Error($"{file}: is not what these rules give; write it again with: catalogue --rules {rules}");
            return ExitCode.Refused;
        }

        report.Write($"{file}: {loaded.Book.Patterns.Count} patterns, {loaded.Book.Drills.Count} drills\n");
        return ExitCode.Done;
    }
}
