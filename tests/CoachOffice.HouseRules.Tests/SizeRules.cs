using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace CoachOffice.HouseRules.Tests;

public sealed class SizeRules
{
    [Fact]
    public void A_file_has_at_most_200_lines() =>
        Offenders.MustBeNone(House.Sources.Concat(House.Tests).Where(f => f.Lines > 200).Select(f => $"{f.Path}: {f.Lines} lines"), "Split it by what it does.");

    [Fact]
    public void A_method_has_at_most_30_lines() =>
        Offenders.MustBeNone(
            from file in House.Sources
            from method in file.All<BaseMethodDeclarationSyntax>()
            let span = method.GetLocation().GetLineSpan()
            let lines = span.EndLinePosition.Line - span.StartLinePosition.Line + 1
            where lines > 34 || Body(method) > 30
            select $"{file.At(method)}: {lines} lines",
            "Give a part of it a name.");

    [Fact]
    public void A_constructor_takes_at_most_5_parameters() =>
        Offenders.MustBeNone(
            (from file in House.Sources
             from type in file.All<TypeDeclarationSyntax>()
             let most = type is RecordDeclarationSyntax ? 6 : 5
             where type.ParameterList?.Parameters.Count > most
             select $"{file.At(type)}: {type.Identifier.Text}")
            .Concat(from file in House.Sources
                    from made in file.All<ConstructorDeclarationSyntax>()
                    where made.ParameterList.Parameters.Count > 5
                    select $"{file.At(made)}: {made.Identifier.Text}"),
            "A class that needs more does more than one thing; a bigger record names its fields with required init.");

    [Fact]
    public void There_are_no_regions() =>
        Offenders.MustBeNone(House.Sources.Concat(House.Tests).Where(f => f.Text.Contains("\n#reg" + "ion", StringComparison.Ordinal)).Select(f => f.Path), "A region hides a class that wants out.");

    private static int Body(BaseMethodDeclarationSyntax method)
    {
        var body = (Microsoft.CodeAnalysis.SyntaxNode?)method.Body ?? method.ExpressionBody;
        if (body is null) return 0;
        var span = body.GetLocation().GetLineSpan();
        return span.EndLinePosition.Line - span.StartLinePosition.Line - (method.Body is null ? 0 : 1);
    }
}
