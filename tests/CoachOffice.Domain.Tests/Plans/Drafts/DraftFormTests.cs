using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using static CoachOffice.Domain.Tests.Plans.Drafts.DraftSample;

namespace CoachOffice.Domain.Tests.Plans.Drafts;

public sealed class DraftFormTests
{
    [Fact]
    public void Every_part_of_a_draft_has_its_key_in_its_place() => Assert.Equal(Written, DraftJson.Text(Whole));

    [Fact]
    public void Every_part_is_read_back() => Assert.Equal(Written, DraftJson.Text(DraftJson.Read(Written)));

    [Fact]
    public void The_parts_are_read_into_their_places()
    {
        var draft = DraftJson.Read(Written);
        Assert.Equal(Whole.Rulebook, draft.Rulebook);
        Assert.Equal(("drafter/7", "11bb"), (draft.Engine, draft.Input));
        Assert.Equal(Whole.Findings[0] with { StandardError = 2.082, ChanceOutside = 0.9981 }, Assert.Single(draft.Findings));
        Assert.Equal(Whole.Parked, draft.Parked);
        Assert.Equal(Whole.Stages[0].Gate, Assert.Single(draft.Stages).Gate);
        Assert.Equal(Whole.Stages[0].Drills, draft.Stages[0].Drills);
        Assert.Equal(Whole.Withheld, draft.Withheld);
        Assert.Equal(Whole.MeasureNext, draft.MeasureNext);
        Assert.Equal(Whole.Cautions, draft.Cautions);
    }

    [Fact]
    public void A_gate_that_measures_nothing_has_null_three_times()
    {
        var open = Whole with { Stages = [Whole.Stages[0] with { Gate = new DraftGate { Kind = GateKind.Coach, Readings = 1, Text = "When it looks right." } }] };
        var text = DraftJson.Text(open);
        Assert.Contains("\"measure\": null,\n        \"atLeast\": null,\n        \"atMost\": null,", text, StringComparison.Ordinal);
        Assert.Equal(open.Stages[0].Gate, DraftJson.Read(text).Stages[0].Gate);
    }

    [Theory]
    [InlineData("a\nb", "a\\nb")]
    [InlineData("a\tb", "a\\tb")]
    [InlineData("a\rb", "a\\u000db")]
    [InlineData("a\u001fb", "a\\u001fb")]
    [InlineData("a b", "a b")]
    [InlineData("a\"b", "a\\\"b")]
    [InlineData("a\\b", "a\\\\b")]
    public void Signs_that_JSON_reserves_are_escaped(string text, string written)
    {
        var json = DraftJson.Text(Whole with { Strengths = [text] });
        Assert.Contains($"    \"{written}\"\n", json, StringComparison.Ordinal);
        Assert.Equal(text, Assert.Single(DraftJson.Read(json).Strengths));
    }

    [Theory]
    [InlineData(-0.0004, "0")]
    [InlineData(100, "100")]
    [InlineData(0.1, "0.1")]
    public void A_rounded_number_keeps_no_sign_of_nothing_and_no_needless_zeros(double error, string written) =>
        Assert.Contains($"\"standardError\": {written},", DraftJson.Text(Whole with { Findings = [Whole.Findings[0] with { StandardError = error }] }), StringComparison.Ordinal);

    [Theory]
    [InlineData("\"drafter/7\"", "null")]
    [InlineData("\"drafter/7\"", "7")]
    [InlineData("\"moderate\"", "\"awful\"")]
    [InlineData("\"impact-spine-tilt.low\"", "\"impact-spine-tilt\"")]
    [InlineData("\"order\": 1", "\"order\": 1.5")]
    [InlineData("\"engine\"", "\"motor\"")]
    public void A_draft_that_was_tampered_with_is_a_defect(string was, string became) =>
        Assert.Throws<FormatException>(() => DraftJson.Read(Written.Replace(was, became, StringComparison.Ordinal)));
}
