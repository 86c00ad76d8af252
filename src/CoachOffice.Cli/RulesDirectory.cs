using System.CommandLine;
using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Cli;

/// <summary>The option <c>--rules DIR</c>: which rulebook; the one beside the executable when not given.</summary>
internal static class RulesDirectory
{
    public static Option<string?> Option() => new("--rules")
    {
        Description = "Directory of the rulebook's .yaml files; the rules that came with the program when left out.",
        HelpName = "DIR",
    };

    /// <summary>The rulebook, or null after its faults were written, named by the directory as the person gave it.</summary>
    public static LoadedRulebook? Load(string? given, Report report)
    {
        var directory = given ?? Path.Combine(AppContext.BaseDirectory, "rules");
        var text = RulebookText.FromDirectory(directory);
        var book = text.TryGet(out var files) ? RulebookReader.Load(files) : null;
        if (book is not null && book.TryGet(out var loaded)) return loaded;
        report.Refuse((book?.Faults ?? text.Faults).Select(fault => fault.File == directory ? fault with { File = Name(given) } : Named(fault, given)));
        return null;
    }

    /// <summary>The fault with its file named by the directory as the person gave it.</summary>
    public static Fault Named(Fault fault, string? given) => fault with { File = $"{Name(given).TrimEnd('/')}/{fault.File}" };

    /// <summary>The same of an entry that stands in a file.</summary>
    public static AnomalyEntry Named(AnomalyEntry entry, string? given) => entry.File is null ? entry : entry with { File = $"{Name(given).TrimEnd('/')}/{entry.File}" };

    private static string Name(string? given) => given ?? "rules";
}
