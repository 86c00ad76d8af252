using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>The written form of a condition, as in the rulebook's files.</summary>
public static class ConditionText
{
    /// <summary>As a pattern's author writes it.</summary>
    public static string Of(Condition condition) => condition switch
    {
        OutCondition c => $"{c.Measure.Value}.{(c.Side == Side.None ? "out" : Terms.Of(c.Side))}{(c.AtLeast > Grade.Mild ? $" at least {Terms.Of(c.AtLeast)}" : "")}",
        ValueCondition c => string.Create(CultureInfo.InvariantCulture, $"{c.Measure.Value} {(c.Side == Side.Low ? "below" : "above")} {c.Bound}"),
        StateCondition c => $"{c.Measure.Value} {Terms.Of(c.State).Replace('-', ' ')}",
        ReadingsCondition c => string.Create(CultureInfo.InvariantCulture, $"{c.Measure.Value} read at least {c.AtLeast} times"),
        OthersInRangeCondition c => string.Create(CultureInfo.InvariantCulture, $"at least {c.AtLeast} others in range"),
        SameSideCondition c => $"same side: {string.Join(", ", c.Measures.Select(m => m.Value))}",
        AnyOfCondition c => $"any of {string.Join(", ", c.Any.Select(Of))}",
        FiredCondition c => $"pattern {c.Pattern.Value}",
        _ => throw new InvalidOperationException($"No words for {condition?.GetType().Name}."),
    };
}
