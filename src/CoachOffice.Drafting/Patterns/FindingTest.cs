using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>What the conditions on one measure mean once it is read: the one place outside the rule engine where that stands.</summary>
internal static class FindingTest
{
    public static bool Holds(OutCondition condition, Finding finding) => IsOut(finding, condition.Side) && finding.Grade >= condition.AtLeast;

    /// <summary>Beyond the bound, and out of range on that side as well.</summary>
    public static bool Holds(ValueCondition condition, Finding finding) =>
        IsOut(finding, condition.Side) && (condition.Side == Side.Low ? finding.Value.Value < condition.Bound : finding.Value.Value > condition.Bound);

    public static bool Holds(ReadingsCondition condition, Finding finding) => finding.Readings >= condition.AtLeast;

    /// <summary>Of a measure that was read.</summary>
    public static bool Holds(StateCondition condition, Finding finding) => condition.State switch
    {
        MeasureState.InRange => finding.Grade == Grade.InRange,
        MeasureState.NotInRange => finding.Grade != Grade.InRange,
        MeasureState.Measured => true,
        _ => false,
    };

    private static bool IsOut(Finding finding, Side side) => finding.IsOut && (side == Side.None || finding.Side == side);
}
