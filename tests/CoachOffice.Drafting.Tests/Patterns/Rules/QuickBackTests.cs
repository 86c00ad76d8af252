using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Too little time going back.</summary>
public sealed class QuickBackTests : PatternRuleTests
{
    protected internal override string Pattern => "quick-back";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("tempo-ratio", 1.6), Read("top-shoulder-turn", 55)];

    protected override Threshold Threshold => new("tempo-ratio", Short: 2, Beyond: 1.99);
}
