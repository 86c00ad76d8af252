using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>One thing that keeps a pattern from holding.</summary>
/// <param name="Condition">The condition that says so; null when nothing that speaks for the pattern is at least moderate.</param>
/// <param name="IsExclusion">True when it stands under `unless` and holds, false when it is wanted and does not.</param>
internal sealed record Objection(Condition? Condition, bool IsExclusion)
{
    private string? _text;

    public static Objection NothingModerate { get; } = new(null, false);

    /// <summary>As the rulebook writes it.</summary>
    public string Text => _text ??= Condition is null ? "nothing at least moderate" : $"{(IsExclusion ? "unless" : "not")}: {ConditionText.Of(Condition)}";
}
