using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Shut at the top, shut at the ball.</summary>
public sealed class ShutTopShutBallTests : PatternRuleTests
{
    protected internal override string Pattern => "shut-top-shut-ball";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("face-to-path", -8, swings: 8), Read("top-face", 40)];

    protected override Threshold Threshold => new("top-face", Short: 20.8, Beyond: 20.9);
}
