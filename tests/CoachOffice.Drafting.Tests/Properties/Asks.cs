using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Tests.Properties;

/// <summary>Which patterns of a book ask for which readings, by their definitions alone.</summary>
internal static class Asks
{
    /// <summary>A reading in range can make or break the pattern: it asks for one, or for one that is not there.</summary>
    public static bool ForInRange(this Pattern pattern, MeasureId measure) =>
        pattern.Needs.Contains(measure)
        || Leaves(pattern.When.Concat(pattern.Unless)).Any(c => c is StateCondition s && s.Measure == measure)
        || Leaves(pattern.When).Any(c => c is OthersInRangeCondition);

    /// <summary>The pattern speaks of the measure anywhere.</summary>
    public static bool Of(this Pattern pattern, MeasureId measure) =>
        pattern.Needs.Contains(measure)
        || Leaves(pattern.When.Concat(pattern.Unless)).Any(c => Names(c, measure))
        || pattern.Root.Concat(pattern.Explains).Concat(pattern.ExplainsIfPresent).Any(f => f.Measure == measure);

    /// <summary>A reading of the measure can rule the pattern out, also through a pattern it gives way to.</summary>
    public static bool InUnless(this Pattern pattern, Rulebook book, MeasureId measure) =>
        Leaves(pattern.Unless).Any(c => Names(c, measure) || (c is FiredCondition fired && book.Find(fired.Pattern) is { } other && (other.Of(measure) || Leaves(other.When).Any(o => o is OthersInRangeCondition))))
        || Leaves(pattern.When).Any(c => c is StateCondition { State: MeasureState.NotMeasured or MeasureState.NotInRange } s && s.Measure == measure);

    /// <summary>The measure is a part of another, or made of others.</summary>
    public static bool IsDerivedOrPart(MeasureId measure) => HouseBook.Book.Measures.Any(m => m.Derived is { } whole && (m.Id == measure || whole.Parts.Contains(measure)));

    /// <summary>The law of leaving a swing alone reads it.</summary>
    public static bool InLeaveItLaw(MeasureId measure) =>
        measure == NamedMeasures.ClubPath || measure == NamedMeasures.FaceToPath || measure == NamedMeasures.ClubSpeed || NamedMeasures.Strike.Contains(measure);

    /// <summary>A law of order names it.</summary>
    public static bool InTrainAfter(MeasureId measure) => HouseBook.Book.TrainAfter.Any(l => l.Work == measure || l.After.Contains(measure));

    private static IEnumerable<Condition> Leaves(IEnumerable<Condition> conditions) =>
        conditions.SelectMany(c => c is AnyOfCondition any ? Leaves(any.Any) : [c]);

    private static bool Names(Condition condition, MeasureId measure) => condition switch
    {
        OutCondition c => c.Measure == measure,
        ValueCondition c => c.Measure == measure,
        StateCondition c => c.Measure == measure,
        ReadingsCondition c => c.Measure == measure,
        SameSideCondition c => c.Measures.Contains(measure),
        _ => false,
    };
}
