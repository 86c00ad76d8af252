using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Rulebook;

/// <summary>A pattern's tests as a coach would say them, one short line each.</summary>
internal sealed class ConditionText(Domain.Plans.Rulebook book)
{
    public string Of(Condition condition) => condition switch
    {
        AnyOfCondition any => string.Join(" or ", any.Any.Select(Of)),
        OutCondition { Side: Side.None } either => $"{Name(either.Measure)} off to either side{Least(either.AtLeast)}",
        OutCondition one => $"{Name(one.Measure)} {Terms.Of(one.Side)}{Least(one.AtLeast)}",
        ValueCondition value => $"{Name(value.Measure)} {(value.Side == Side.Low ? "below" : "above")} {Amount(value)}",
        SameSideCondition same => $"{string.Join(" and ", same.Measures.Select(Name))} off to the same side",
        StateCondition state => $"{Name(state.Measure)} {State(state.State)}",
        ReadingsCondition readings => $"{Name(readings.Measure)} read from {readings.AtLeast} swings or more",
        OthersInRangeCondition others => $"{others.AtLeast} other values or more in range",
        FiredCondition fired => $"\"{book.Find(fired.Pattern)?.Name ?? fired.Pattern.Value}\" stands",
        _ => condition.ToString(),
    };

    /// <summary>The same as it stands inside a sentence: "spine tilt at impact is low".</summary>
    public string Said(Condition condition) => condition switch
    {
        AnyOfCondition any => string.Join(" or ", any.Any.Select(Said)),
        OutCondition { Side: Side.None } either => $"{Small(either.Measure)} is off to either side{Least(either.AtLeast)}",
        OutCondition one => $"{Small(one.Measure)} is {Terms.Of(one.Side)}{Least(one.AtLeast)}",
        ValueCondition value => $"{Small(value.Measure)} is {(value.Side == Side.Low ? "below" : "above")} {Amount(value)}",
        SameSideCondition same => $"{string.Join(" and ", same.Measures.Select(Small))} are off to the same side",
        StateCondition { State: MeasureState.Measured or MeasureState.NotMeasured } state => $"{Small(state.Measure)} was {State(state.State)}",
        StateCondition state => $"{Small(state.Measure)} is {State(state.State)}",
        ReadingsCondition readings => $"{Small(readings.Measure)} was read from {readings.AtLeast} swings or more",
        OthersInRangeCondition others => $"{others.AtLeast} other values or more are in range",
        _ => Of(condition),
    };

    /// <summary>"spine tilt at impact is low".</summary>
    public string Said(FaultId fault) => $"{Small(fault.Measure)} is {Terms.Of(fault.Side)}";

    /// <summary>A measure's name inside a sentence.</summary>
    public string Small(MeasureId measure) => Name(measure) is { Length: > 1 } name && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : Name(measure);

    private string Name(MeasureId measure) => MeasureWords.NameOf(measure, book);

    private string Amount(ValueCondition value) =>
        book.Find(value.Measure) is { } measure ? UnitText.Metric.Amount(value.Bound, measure.Unit) : UnitText.Metric.Number(value.Bound, Unit.Ratio);

    private static string Least(Grade grade) => grade > Grade.Mild ? $", {Terms.Of(grade)} at least" : "";

    private static string State(MeasureState state) => PlainState(Terms.Of(state));

    private static string PlainState(string word) => word.Replace('-', ' ');
}
