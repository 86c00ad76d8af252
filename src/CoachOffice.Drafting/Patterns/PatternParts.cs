using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>A pattern taken apart: each condition with what it says when it stands against the pattern.</summary>
internal sealed class PatternParts
{
    public PatternParts(Pattern pattern)
    {
        Pattern = pattern;
        When = [.. pattern.When.Select(c => new Objection(c, IsExclusion: false))];
        Needs = [.. pattern.Needs.Select(m => new Objection(new StateCondition(m, MeasureState.InRange), IsExclusion: false))];
        Unless = [.. pattern.Unless.Select(c => new Objection(c, IsExclusion: true))];
    }

    public Pattern Pattern { get; }

    public IReadOnlyList<Objection> When { get; }

    public IReadOnlyList<Objection> Needs { get; }

    public IReadOnlyList<Objection> Unless { get; }
}
