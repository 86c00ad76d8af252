using System.Globalization;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans;

/// <summary>Names one entry of a rulebook. Kind and key together are unique in a book; the key is the entry's id where it has one.</summary>
/// <param name="Kind">The kind of entry.</param>
/// <param name="Key">Its id; for a range the measure; <c>M from 60</c> for an adjustment, <c>M after N</c> for a law of order, <c>pattern: name</c> for a worked case; the kind's own word for what a book has once.</param>
public sealed record EntryId(EntryKind Kind, string Key) : IComparable<EntryId>
{
    /// <summary>The dosage, which a book has once.</summary>
    public static EntryId Dosage { get; } = Only(EntryKind.Dosage);

    /// <summary>The book's name, which it has once.</summary>
    public static EntryId Name { get; } = Only(EntryKind.Name);

    public static EntryId Of(MeasureId id) => new(EntryKind.Measure, id.Value);

    public static EntryId Of(PatternId id) => new(EntryKind.Pattern, id.Value);

    public static EntryId Of(DrillId id) => new(EntryKind.Drill, id.Value);

    public static EntryId Of(ProgressionId id) => new(EntryKind.Progression, id.Value);

    public static EntryId Of(CautionId id) => new(EntryKind.Caution, id.Value);

    /// <summary>The wanted ranges of a measure, all clubs together.</summary>
    public static EntryId RangesOf(MeasureId measure) => new(EntryKind.Range, measure.Value);

    public static EntryId Of(RangeAdjustment adjustment) =>
        Adjusting(adjustment.Measure.Value, adjustment.FromAge == 0 ? null : adjustment.FromAge.ToString(CultureInfo.InvariantCulture), [.. (adjustment.Levels ?? []).Select(level => Terms.Of(level))]);

    /// <summary>An adjustment by the words of its measure, its age and its levels.</summary>
    public static EntryId Adjusting(string measure, string? age, IReadOnlyList<string> levels) =>
        new(EntryKind.Adjustment, $"{measure}{(age is null ? "" : $" from {age}")}{(levels.Count == 0 ? "" : $" for {string.Join(' ', levels.Order(StringComparer.Ordinal))}")}");

    public static EntryId Of(TrainAfter law) => Waiting(law.Work.Value, law.After[0].Value);

    /// <summary>A law of order by the measure that waits and the first it waits for.</summary>
    public static EntryId Waiting(string work, string first) => new(EntryKind.TrainAfter, $"{work} after {first}");

    public static EntryId Of(GoalMeasures goal) => new(EntryKind.Goal, Terms.Of(goal.Goal));

    /// <summary>A worked case by its pattern and its own name.</summary>
    public static EntryId Case(string pattern, string name) => new(EntryKind.Case, $"{pattern}: {name}");

    /// <summary>By kind, then key: every list of entries has one order.</summary>
    public int CompareTo(EntryId? other)
    {
        if (other is null) return 1;
        var order = Kind.CompareTo(other.Kind);
        return order == 0 ? string.CompareOrdinal(Key, other.Key) : order;
    }

    public static bool operator <(EntryId left, EntryId right) => Comparer<EntryId>.Default.Compare(left, right) < 0;

    public static bool operator >(EntryId left, EntryId right) => Comparer<EntryId>.Default.Compare(left, right) > 0;

    public static bool operator <=(EntryId left, EntryId right) => Comparer<EntryId>.Default.Compare(left, right) <= 0;

    public static bool operator >=(EntryId left, EntryId right) => Comparer<EntryId>.Default.Compare(left, right) >= 0;

    /// <summary>E.g. <c>drill head-against-shade</c>.</summary>
    public override string ToString() => Kind is EntryKind.Dosage or EntryKind.Name ? Key : $"{Terms.Of(Kind)} {Key}";

    private static EntryId Only(EntryKind kind) => new(kind, Terms.Of(kind));
}
