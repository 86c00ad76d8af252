using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace CoachOffice.HouseRules.Tests;

public sealed class NameRules
{
    private static readonly string[] EmptyWords = ["Manager", "Helper", "Helpers", "Service", "Dto", "Impl", "Util", "Utils", "Processor"];

    [Fact]
    public void Names_say_what_a_thing_is() =>
        Offenders.MustBeNone(
            from file in House.Sources
            from type in file.All<BaseTypeDeclarationSyntax>()
            from word in EmptyWords
            where type.Identifier.Text.EndsWith(word, StringComparison.Ordinal)
            select $"{file.At(type)}: {type.Identifier.Text}",
            "Name what it does for a coach.");

    [Fact]
    public void The_namespace_is_the_folder() =>
        Offenders.MustBeNone(
            from file in House.Sources
            from space in file.All<BaseNamespaceDeclarationSyntax>()
            where space.Name.ToString() != Expected(file.Path)
            select $"{file.Path}: {space.Name} instead of {Expected(file.Path)}",
            "The path is the sentence.");

    [Fact]
    public void A_file_is_named_for_a_type_in_it() =>
        Offenders.MustBeNone(
            from file in House.Sources
            let types = file.All<BaseTypeDeclarationSyntax>().Select(t => t.Identifier.Text).ToList()
            let name = Path.GetFileName(file.Path).Split('.')[0]
            // A page Edit.cshtml.cs holds an EditModel, as the framework looks for it.
            where types.Count == 1 && types[0] != name && types[0] != name + "Model" && name != "Program"
            select $"{file.Path}: {types[0]}",
            "One guess finds it.");

    [Fact]
    public void Classes_are_sealed_static_or_abstract() =>
        Offenders.MustBeNone(
            from file in House.Sources
            from type in file.All<TypeDeclarationSyntax>()
            where type.Kind() is SyntaxKind.ClassDeclaration or SyntaxKind.RecordDeclaration
            where !type.Modifiers.Any(m => m.Kind() is SyntaxKind.SealedKeyword or SyntaxKind.StaticKeyword or SyntaxKind.AbstractKeyword)
            where type.Identifier.Text is not "Program"
            select $"{file.At(type)}: {type.Identifier.Text}",
            "Inheritance is planned or forbidden.");

    private static string Expected(string path)
    {
        var folders = Path.GetDirectoryName(path)!.Replace('\\', '/').Split('/');
        return folders[0] == "src" ? string.Join('.', folders[1..]) : string.Join('.', ["CoachOffice", "SeedDemo", .. folders[1..]]);
    }
}
