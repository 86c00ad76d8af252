using System.CommandLine;

namespace CoachOffice.Cli;

/// <summary>The command line, testable in-process: arguments in, bytes and an exit code out.</summary>
public static class CommandLine
{
    /// <summary>Runs one command; see <see cref="ExitCode"/> for what it returns.</summary>
    /// <param name="args">The arguments.</param>
    /// <param name="output">Results, as UTF-8 bytes without a byte order mark, lines ended by LF.</param>
    /// <param name="errors">Faults and warnings, a line each.</param>
    public static int Run(IReadOnlyList<string> args, Stream output, TextWriter errors)
    {
        var report = new Report(output, errors);
        try
        {
            return Run(Commands(report).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null }), report);
        }
#pragma warning disable CA1031 // The one place that answers for defects: a line, not a stack, and its own exit code.
        catch (Exception defect)
#pragma warning restore CA1031
        {
            report.Error($"This is a defect of the program, not of your files: {defect.GetType().Name}: {defect.Message.ReplaceLineEndings(" ")}");
            return ExitCode.Defect;
        }
    }

    private static int Run(ParseResult parsed, Report report)
    {
        foreach (var error in parsed.Errors) report.Error(error.Message);
        if (parsed.Errors.Count > 0)
        {
            report.Error("Usage: check-rulebook [--rules DIR] [--own FILE] [--coverage] | rulebook export --as MAIL [--edition N] [--data DIR] | rulebook import FILE --as MAIL [--why TEXT] [--look] [--data DIR] | draft FILE [--text] [--rules DIR] | catalogue [--rules DIR] [--check] | backup [--to DIR] [--keep N] [--data DIR] | restore FOLDER [--data DIR] | try-backup FOLDER | move --from KIND:PLACE --to KIND:PLACE; --help says more.");
            return ExitCode.Usage;
        }

        using var text = new StringWriter { NewLine = "\n" };
        var code = parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = text, Error = report.Errors });
        report.Write(text.ToString());
        return code;
    }

    private static RootCommand Commands(Report report) => new("The rulebook and the drafts of a golf instructor's office, without the office.")
    {
        CheckRulebook.Command(report),
        ExchangeRules.Command(report),
        DraftLesson.Command(report),
        WriteCatalogue.Command(report),
        KeepSafe.Backup(report),
        KeepSafe.Restore(report),
        KeepSafe.Try(report),
        MovePractice.Command(report),
    };
}
