using System.CommandLine;
using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.Cli;

/// <summary>The option <c>--rules DIR</c>: which rulebook; the one beside the executable when not given.</summary>
internal static class RulesDirectory
{
    public static Option<string?> Option() => new("--rules")
    {
        Description = "Directory of the rulebook's .yaml files; the rules that came with the program when left out.",
        HelpName = "DIR",
    };

    /// <summary>The option <c>--own FILE</c>: a practice's own rules over them.</summary>
    public static Option<FileInfo> OwnOption()
    {
        var own = new Option<FileInfo>("--own") { Description = "A practice's own rules as a file, laid over them.", HelpName = "FILE" };
        own.AcceptExistingOnly();
        return own;
    }

    /// <summary>The rulebook, or null after its faults were written, named by the directory and the own file as the person gave them.</summary>
    public static LoadedRulebook? Load(string? given, Report report, FileInfo? own = null)
    {
        var directory = given ?? Path.Combine(AppContext.BaseDirectory, "rules");
        var text = RulebookText.FromDirectory(directory);
        var book = text.TryGet(out var files) ? RulebookReader.Load(own is null ? files : files.With([KeyValuePair.Create(OwnFiles.Kept, File.ReadAllText(own.FullName))])) : null;
        if (book is not null && book.TryGet(out var loaded)) return loaded;
        report.Refuse((book?.Faults ?? text.Faults).Select(fault => fault.File == directory ? fault with { File = Name(given) } : Named(fault, given, own)));
        return null;
    }

    /// <summary>The fault with its file named by the directory as the person gave it.</summary>
    public static Fault Named(Fault fault, string? given, FileInfo? own = null) => fault with { File = Named(fault.File, given, own) };

    /// <summary>The same of an entry that stands in a file.</summary>
    public static AnomalyEntry Named(AnomalyEntry entry, string? given, FileInfo? own = null) => entry.File is null ? entry : entry with { File = Named(entry.File, given, own) };

    private static string Named(string file, string? given, FileInfo? own) => own is not null && file == OwnFiles.Kept ? own.ToString() : $"{Name(given).TrimEnd('/')}/{file}";

    private static string Name(string? given) => given ?? "rules";
}
