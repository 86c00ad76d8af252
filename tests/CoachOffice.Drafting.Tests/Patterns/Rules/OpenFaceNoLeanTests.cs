using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Open face, handle falling back.</summary>
public sealed class OpenFaceNoLeanTests : PatternRuleTests
{
    protected internal override string Pattern => "open-face-no-lean";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("impact-shaft-lean", -3), Read("top-face", -35)];

    protected override Threshold Threshold => new("top-face", Short: -20.8, Beyond: -20.9);
}
