using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace CoachOffice.HouseRules.Tests;

public sealed class ValueRules
{
    private static readonly string[] Naked = ["decimal", "DateTime", "DateTimeOffset", "Guid", "double"];

    /// <summary>Where a bare number is the honest type: arithmetic on numbers without a unit, units themselves, and written forms.</summary>
    private static readonly string[] Arithmetic = ["Unit", "Quantity", "Limits", "CanonicalNumber", "CanonicalJson", "CanonicalWriter"];

    [Fact]
    public void Numbers_cross_methods_with_their_unit() =>
        Offenders.MustBeNone(
            from file in Core()
            where !file.Path.Contains("/Statistics/", StringComparison.Ordinal)
            from method in file.All<MethodDeclarationSyntax>()
            where IsPublic(method) && method.Parent is TypeDeclarationSyntax type && IsPublic(type) && !Arithmetic.Contains(type.Identifier.Text)
            from parameter in method.ParameterList.Parameters
            where parameter.Type?.ToString().TrimEnd('?') is "decimal" or "double" or "DateTime" or "DateTimeOffset"
            select $"{file.At(method)}: {method.Identifier.Text}({parameter})",
            $"Take a Quantity, a Money, an Instant or a LocalDate, not {string.Join(", ", Naked)}.");

    [Fact]
    public void Public_types_of_the_core_say_what_they_mean() =>
        Offenders.MustBeNone(
            from file in Core().Concat(House.Sources.Where(f => f.Path.StartsWith("src/CoachOffice.Data/", StringComparison.Ordinal)))
            from type in file.All<BaseTypeDeclarationSyntax>()
            where IsPublic(type) && type.Parent is BaseNamespaceDeclarationSyntax or CompilationUnitSyntax
            where IsPublic(type) && !type.GetLeadingTrivia().Any(t => t.IsKind(SyntaxKind.SingleLineDocumentationCommentTrivia))
            select $"{file.At(type)}: {type.Identifier.Text}",
            "Meaning, unit, range, errors, source.");

    private static IEnumerable<SourceFile> Core() =>
        House.Sources.Where(f => f.Path.StartsWith("src/CoachOffice.Domain/", StringComparison.Ordinal) || f.Path.StartsWith("src/CoachOffice.Drafting/", StringComparison.Ordinal));

    private static bool IsPublic(MemberDeclarationSyntax member) => member.Modifiers.Any(SyntaxKind.PublicKeyword);
}
