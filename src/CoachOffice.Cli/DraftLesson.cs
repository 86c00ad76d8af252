using System.CommandLine;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Reading.Lessons;

namespace CoachOffice.Cli;

/// <summary><c>draft FILE [--text] [--rules DIR]</c>: one lesson in, one plan out.</summary>
internal static class DraftLesson
{
    public static Command Command(Report report)
    {
        var file = new Argument<string>("FILE") { Description = "A lesson as JSON." };
        var text = new Option<bool>("--text") { Description = "Print the plan for a person instead of as JSON." };
        var rules = RulesDirectory.Option();
        var command = new Command("draft", "Drafts the plan for one lesson.") { file, text, rules };
        command.SetAction(parsed => Run(parsed.GetValue(file)!, parsed.GetValue(text), parsed.GetValue(rules), report));
        return command;
    }

    private static int Run(string file, bool asText, string? rules, Report report)
    {
        if (RulesDirectory.Load(rules, report) is not { } loaded) return ExitCode.Refused;
        var read = LessonReader.FromFile(file, loaded.Book);
        report.Warn(read.Warnings);
        return read.TryGet(out var facts) ? Draft(loaded, facts, asText, report) : report.Refuse(read.Faults);
    }

    private static int Draft(LoadedRulebook loaded, LessonFacts facts, bool asText, Report report)
    {
        var draft = Drafter.Draft(CompiledRulebook.Compile(loaded), facts);
        if (asText) report.Write(DraftText.Write(draft, loaded.Book));
        else report.Write(DraftJson.Write(draft));
        return ExitCode.Done;
    }
}
