using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>The fact a rule leaves when it fires, so that another pattern's `unless` can see it. A class: told apart by reference.</summary>
public sealed class FiredPattern(PatternId pattern)
{
    /// <summary>Which pattern.</summary>
    public string Pattern { get; } = pattern.Value;
}
