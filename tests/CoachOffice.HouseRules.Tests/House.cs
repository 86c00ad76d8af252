using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace CoachOffice.HouseRules.Tests;

/// <summary>The house as it lies on disk: its root, its source files and what they declare.</summary>
internal static class House
{
    /// <summary>The folder of CoachOffice.sln.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Every hand-written source file below src and seed-demo.</summary>
    public static IReadOnlyList<SourceFile> Sources { get; } = [.. Files("src"), .. Files("seed-demo")];

    /// <summary>Every hand-written source file of the tests.</summary>
    public static IReadOnlyList<SourceFile> Tests { get; } = [.. Files("tests")];

    /// <summary>Path below the root with forward slashes.</summary>
    public static string Below(string path) => Path.GetRelativePath(Root, path).Replace('\\', '/');

    private static IEnumerable<SourceFile> Files(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
            .Where(path => !Below(path).Split('/').Any(part => part is "bin" or "obj"))
            .Order(StringComparer.Ordinal)
            .Select(path =>
            {
                var text = File.ReadAllText(path);
                return new SourceFile(Below(path), text, CSharpSyntaxTree.ParseText(text, path: path).GetCompilationUnitRoot());
            });

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "CoachOffice.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("The tests run inside the checkout.");
    }
}

/// <summary>One source file.</summary>
internal sealed record SourceFile(string Path, string Text, CompilationUnitSyntax Unit)
{
    public int Lines => Text.AsSpan().TrimEnd().Count('\n') + 1;

    public IEnumerable<T> All<T>()
        where T : Microsoft.CodeAnalysis.SyntaxNode => Unit.DescendantNodes().OfType<T>();

    public string At(Microsoft.CodeAnalysis.SyntaxNode node) => $"{Path}:{node.GetLocation().GetLineSpan().StartLinePosition.Line + 1}";
}
