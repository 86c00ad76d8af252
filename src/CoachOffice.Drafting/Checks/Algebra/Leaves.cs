using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Checks.Algebra;

/// <summary>The single conditions on single measures that the patterns of a book are made of.</summary>
internal static class Leaves
{
    /// <summary>All of a book, each once.</summary>
    public static IEnumerable<Condition> Of(Rulebook book) =>
        book.Patterns.SelectMany(p => p.When.Concat(p.Unless).SelectMany(Of).Concat(p.Needs.Select(m => new StateCondition(m, MeasureState.InRange)))).Distinct();

    /// <summary>The measure a single condition speaks of.</summary>
    public static MeasureId MeasureOf(Condition leaf) => leaf switch
    {
        OutCondition c => c.Measure,
        ValueCondition c => c.Measure,
        StateCondition c => c.Measure,
        ReadingsCondition c => c.Measure,
        _ => throw new InvalidOperationException($"{leaf?.GetType().Name} speaks of no single measure."),
    };

    /// <summary>True for a condition on one measure.</summary>
    public static bool IsLeaf(Condition condition) => condition is OutCondition or ValueCondition or StateCondition or ReadingsCondition;

    private static IEnumerable<Condition> Of(Condition condition) =>
        condition is AnyOfCondition any ? any.Any.SelectMany(Of) : IsLeaf(condition) ? [condition] : [];
}
