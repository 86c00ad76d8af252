using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Late hips, handle falling back.</summary>
public sealed class HipsLateHandleBackTests : PatternRuleTests
{
    protected internal override string Pattern => "hips-late-handle-back";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("impact-pelvis-open", 5), Read("impact-shaft-lean", -6)];

    protected override Threshold Threshold => new("impact-pelvis-open", Short: 19.2, Beyond: 19.1);
}
