using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The bowed wrist shuts the face.</summary>
public sealed class BowedAndShutTests : PatternRuleTests
{
    protected internal override string Pattern => "bowed-and-shut";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("top-face", 40), Read("top-lead-wrist", 32)];

    protected override Threshold Threshold => new("top-lead-wrist", Short: 17.8, Beyond: 17.9);
}
