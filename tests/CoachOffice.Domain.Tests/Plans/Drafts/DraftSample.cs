using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Domain.Tests.Plans.Drafts;

/// <summary>One whole draft and its written form.</summary>
internal static class DraftSample
{
    private static readonly FaultId Tilt = FaultId.Parse("impact-spine-tilt.low");
    private static readonly FaultId Head = FaultId.Parse("downswing-head-shift.high");

    /// <summary>A draft with something in each part.</summary>
    public static readonly Draft Whole = new()
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
    public const string Written = """
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
}
