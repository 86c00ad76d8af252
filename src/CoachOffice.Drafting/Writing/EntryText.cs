using System.Text.Json.Nodes;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Writing;

/// <summary>One entry of a rulebook as YAML in its canonical layout, as it stands alone: without the dash and the indent it has in a list. The reader gives the same entry back.</summary>
public static class EntryText
{
    public static string Of(Drill drill) => Write(EntryTrees.Of(drill));

    public static string Of(Pattern pattern) => Write(EntryTrees.Of(pattern));

    public static string Of(Progression progression) => Write(EntryTrees.Of(progression));

    public static string Of(Caution caution) => Write(EntryTrees.Of(caution));

    public static string Of(TrainAfter law) => Write(EntryTrees.Of(law));

    public static string Of(GoalMeasures goal) => Write(EntryTrees.Of(goal));

    public static string Of(RangeAdjustment adjustment) => Write(EntryTrees.Of(adjustment));

    public static string Of(Dosage dosage) => Write(DosageTree.Of(dosage));

    public static string Of(PatternCase one) => Write(EntryTrees.Of(one));

    /// <summary>All ranges of one measure; throws <see cref="ArgumentException"/> when there is none.</summary>
    public static string Of(IReadOnlyList<WantedRange> ranges)
    {
        ArgumentNullException.ThrowIfNull(ranges);
        return ranges.Count > 0 ? Write(EntryTrees.Of(ranges)) : throw new ArgumentException("A measure without a range has no entry.", nameof(ranges));
    }

    /// <summary>A measure with its order number.</summary>
    public static string Of(Measure measure, int order) => Write(EntryTrees.Of(measure, order));

    /// <summary>An entry from a form: names, texts, numbers and lists as they were entered, right or wrong. What is wrong in it, the reader says.</summary>
    public static string Write(JsonObject entry) => YamlText.Of(entry, 1);
}
