using System.CommandLine;
using CoachOffice.Domain;
using CoachOffice.Drafting.Writing;
using CoachOffice.UseCases.Rulebook;

namespace CoachOffice.Cli;

/// <summary><c>rulebook export</c> and <c>rulebook import FILE</c>: the practice's own rules out of the office and into it, as the same file the pages give.</summary>
internal static class ExchangeRules
{
    public static Command Command(Report report) => new("rulebook", "Takes a practice's own rules out of its office, or brings them in.") { Export(report), Import(report) };

    private static Command Export(Report report)
    {
        var (mail, data) = (As(), Data());
        var edition = new Option<int?>("--edition") { Description = "Those of an earlier edition; of the one in force when left out.", HelpName = "N" };
        var command = new Command("export", "Writes the practice's own rules as YAML.") { mail, data, edition };
        command.SetAction(async parsed =>
        {
            var file = await OwnOffice.Do<ExportOwnRules, string>(parsed.GetValue(data), parsed.GetValue(mail)!, (export, actor) => export.Of(parsed.GetValue(edition), actor));
            if (!file.TryGet(out var text)) return Refused(file.Refusals, report);
            report.Write(text);
            return ExitCode.Done;
        });
        return command;
    }

    private static Command Import(Report report)
    {
        var (mail, data) = (As(), Data());
        var file = new Argument<FileInfo>("FILE") { Description = "Own rules as YAML; they take the place of all the practice has." };
        file.AcceptExistingOnly();
        var why = new Option<string>("--why") { Description = "The reason, for the history; needed unless --look.", HelpName = "TEXT" };
        var look = new Option<bool>("--look") { Description = "Only say what it would change." };
        var command = new Command("import", "Puts own rules from a file into force as the next edition.") { file, mail, data, why, look };
        command.SetAction(async (parsed, stop) =>
        {
            var form = new OwnRulesForm(await File.ReadAllTextAsync(parsed.GetValue(file)!.FullName, stop), parsed.GetValue(why) ?? "", null, parsed.GetValue(look));
            var brought = await OwnOffice.Do<ImportOwnRules, AdoptedEdition>(parsed.GetValue(data), parsed.GetValue(mail)!, (import, actor) => import.From(form, actor, stop));
            if (!brought.TryGet(out var edition)) return Refused([.. brought.Refusals.Select(r => r with { Sentence = r.Sentence.Replace(OwnFiles.Kept, parsed.GetValue(file)!.ToString(), StringComparison.Ordinal) })], report);
            report.Write($"{(form.DryRun ? "would be " : "")}edition {edition.Number}, sha256 {edition.Sha256}\n{string.Concat(edition.Changes.Select(change => $"{change}\n"))}");
            report.Warn(edition.Warnings);
            return ExitCode.Done;
        });
        return command;
    }

    private static Option<string> As() => new("--as") { Description = "Mail address of the account that does it.", HelpName = "MAIL", Required = true };

    private static Option<string?> Data() => new("--data") { Description = "The office's data folder; where the office itself looks for it when left out.", HelpName = "DIR" };

    private static int Refused(IReadOnlyList<Refusal> refusals, Report report)
    {
        foreach (var refusal in refusals) report.Error(refusal.Sentence);
        return ExitCode.Refused;
    }
}
