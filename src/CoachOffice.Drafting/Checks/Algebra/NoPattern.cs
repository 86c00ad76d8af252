using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Checks.Algebra;

/// <summary>Stands where a condition is asked about apart from any pattern.</summary>
internal static class NoPattern
{
    public static Pattern One { get; } = new()
    {
        Id = PatternId.From("none"),
        Name = "none",
        Precedence = 0,
        When = [],
        Root = [],
        Explains = [],
        Because = "none",
        Rationale = "none",
        Source = SourceMark.CommonPractice,
    };
}
