using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Shut face, handle held ahead.</summary>
public sealed class ShutFaceHeldOffTests : PatternRuleTests
{
    protected internal override string Pattern => "shut-face-held-off";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("impact-shaft-lean", 22), Read("top-face", 40)];

    protected override Threshold Threshold => new("top-face", Short: 20.8, Beyond: 20.9);
}
