using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Domain.Tests.Plans.Drafts;

public sealed class DraftFormTests
{
    private static readonly FaultId Tilt = FaultId.Parse("impact-spine-tilt.low");
    private static readonly FaultId Head = FaultId.Parse("downswing-head-shift.high");

    private static readonly Draft Whole = new()
    {
        Rulebook = new DraftRulebook("House rulebook", "00aa"),
        Engine = "drafter/7",
        Input = "11bb",
        Findings =
        [
            new DraftFinding
            {
                Measure = "impact-spine-tilt", Side = Side.Low, Grade = Grade.Moderate, Value = 14, Unit = "deg", StandardError = 2.0817, RangeLow = 20, RangeHigh = 28, OutsideBy = 6, ChanceOutside = 0.99805,
            },
        ],
        Causes = [new DraftCause("body-outruns", Head, [Tilt], "Your upper half gets there first.")],
        Focus = [new DraftFocus(1, Head, "body-outruns", "It drives the rest.", []), new DraftFocus(2, Tilt, null, "It is far out.", [Head])],
        Parked = [new DraftParked(Tilt, ParkedReason.ExplainedBy, Head), new DraftParked(Head, ParkedReason.TooSmall, null)],
        Stages =
        [
            new DraftStage(
                Head,
                Stage.Rehearse,
                [new DraftDrill { Drill = "shadow-head", Name = "Shadow head", Sets = 2, Reps = 15, SessionsPerWeek = 3, MinutesPerSession = 12, Cue = "keep the shadow" }],
                new DraftGate { Kind = GateKind.Measure, Measure = "downswing-head-shift", AtLeast = -5, AtMost = 5, Readings = 3, Text = "Five or less." }),
        ],
        Withheld = [new DraftWithheld("late-chest", WithheldReason.TriedInVain, "2026-04-01")],
        MeasureNext = [new DraftMeasureNext("head-drift", "It would decide.")],
        Strengths = ["club-path"],
        Cautions = [new DraftCaution("space-around", "Look around first.")],
        Trace = [new DraftTrace("order:key", ["a", "b"])],
    };

    // The written form other programs read: every key, in its place. A change here breaks drafts that are kept.
    internal const string Written = """
        {
          "rulebook": {
            "name": "House rulebook",
            "sha256": "00aa"
          },
          "engine": "drafter/7",
          "input": "11bb",
          "findings": [
            {
              "measure": "impact-spine-tilt",
              "side": "low",
              "grade": "moderate",
              "value": 14,
              "unit": "deg",
              "standardError": 2.082,
              "range": [
                20,
                28
              ],
              "outsideBy": 6,
              "chanceOutside": 0.9981
            }
          ],
          "causes": [
            {
              "pattern": "body-outruns",
              "root": "downswing-head-shift.high",
              "explains": [
                "impact-spine-tilt.low"
              ],
              "because": "Your upper half gets there first."
            }
          ],
          "focus": [
            {
              "order": 1,
              "fault": "downswing-head-shift.high",
              "pattern": "body-outruns",
              "because": "It drives the rest.",
              "after": []
            },
            {
              "order": 2,
              "fault": "impact-spine-tilt.low",
              "pattern": null,
              "because": "It is far out.",
              "after": [
                "downswing-head-shift.high"
              ]
            }
          ],
          "parked": [
            {
              "fault": "impact-spine-tilt.low",
              "reason": "explained-by",
              "by": "downswing-head-shift.high"
            },
            {
              "fault": "downswing-head-shift.high",
              "reason": "too-small",
              "by": null
            }
          ],
          "stages": [
            {
              "fault": "downswing-head-shift.high",
              "stage": "rehearse",
              "drills": [
                {
                  "drill": "shadow-head",
                  "name": "Shadow head",
                  "sets": 2,
                  "reps": 15,
                  "sessionsPerWeek": 3,
                  "minutesPerSession": 12,
                  "cue": "keep the shadow"
                }
              ],
              "gate": {
                "kind": "measure",
                "measure": "downswing-head-shift",
                "atLeast": -5,
                "atMost": 5,
                "readings": 3,
                "text": "Five or less."
              }
            }
          ],
          "withheld": [
            {
              "drill": "late-chest",
              "reason": "tried-in-vain",
              "detail": "2026-04-01"
            }
          ],
          "measureNext": [
            {
              "measure": "head-drift",
              "because": "It would decide."
            }
          ],
          "strengths": [
            "club-path"
          ],
          "cautions": [
            {
              "id": "space-around",
              "text": "Look around first."
            }
          ],
          "trace": [
            {
              "rule": "order:key",
              "facts": [
                "a",
                "b"
              ]
            }
          ]
        }

        """;

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
