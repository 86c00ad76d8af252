using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Replay;

/// <summary>Which measures two books define otherwise, as far as a draft reads the definition.</summary>
internal sealed class MeasureDifference
{
    private static readonly string[] Numbers = [nameof(Measure.SetupError), nameof(Measure.SwingError), nameof(Measure.Step)];

    // The row is compared as an order: a measure added in front moves all numbers and changes nothing.
    private static readonly string[] Unread = [nameof(Measure.HowTo), nameof(Measure.View), nameof(Measure.Row)];

    public MeasureDifference(Rulebook inForce, Rulebook edited)
    {
        foreach (var id in inForce.Measures.Concat(edited.Measures).Select(m => m.Id).Distinct())
        {
            if (inForce.Find(id) is not { } before || edited.Find(id) is not { } after) Redefined.Add(id);
            else Compare(before, after);
        }

        IsReordered = !Order(inForce, edited).SequenceEqual(Order(edited, inForce));
    }

    /// <summary>Added, removed, or changed in something a draft may say or judge by wherever the measure is read.</summary>
    public HashSet<MeasureId> Redefined { get; } = [];

    /// <summary>Changed in its errors or its step, which say nothing of a value in range.</summary>
    public HashSet<MeasureId> Remeasured { get; } = [];

    /// <summary>Called otherwise: a draft may name a measure nobody read.</summary>
    public HashSet<MeasureId> Renamed { get; } = [];

    /// <summary>The measures both books have stand in another order.</summary>
    public bool IsReordered { get; }

    /// <summary>True when no measure differs in anything a draft reads.</summary>
    public bool IsNothing => Redefined.Count + Remeasured.Count == 0 && !IsReordered;

    private void Compare(Measure before, Measure after)
    {
        if (before.Name != after.Name) Renamed.Add(before.Id);
        if (before.Step is null != after.Step is null || Words(before) != Words(after)) Redefined.Add(before.Id);
        else if (!NumbersOf(before).SequenceEqual(NumbersOf(after))) Remeasured.Add(before.Id);
    }

    private static string Words(Measure measure) => DefinitionText.Of(measure, [.. Numbers, .. Unread]);

    private static IEnumerable<double?> NumbersOf(Measure measure) => [measure.SetupError, measure.SwingError, measure.Step];

    private static IEnumerable<MeasureId> Order(Rulebook of, Rulebook other) => of.Measures.OrderBy(m => m.Row).Select(m => m.Id).Where(id => other.Find(id) is not null);
}
