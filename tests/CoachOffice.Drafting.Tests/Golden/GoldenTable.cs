namespace CoachOffice.Drafting.Tests.Golden;

/// <summary>Whole lessons whose drafts are kept, each with the reason why it is worth keeping.</summary>
internal static class GoldenTable
{
    public static IReadOnlyDictionary<string, string> Why { get; } = new SortedDictionary<string, string>(StringComparer.Ordinal)
    {
        ["dives-with-the-driver"] = "One early cause behind six findings, over three moments; speed waits for the head.",
        ["five-minutes-a-week"] = "Too little time for any drill: the fault stays named, and the plan says so instead of inventing a session.",
        ["flies-well-leave-it"] = "Path, face and low point in range: three moderate findings are left alone.",
        ["garden-without-kit"] = "A sway that carries everything with it, for a fifteen-year-old with no kit and no ball.",
        ["inches-and-miles-with-a-wedge"] = "Other units, a tall student's ranges, tempo and smash derived from their parts.",
        ["junior-with-a-closing-face"] = "Eleven years old and a beginner: one thing, short sessions, and the hold before the stance.",
        ["one-reading-only"] = "The contract's own example: a consequence with nothing read before it gives provisional, slow work only.",
        ["one-swing-each-all-at-the-edge"] = "Nothing beyond reading error: no work, but how many more readings, or which camera.",
        ["only-the-face-disagrees"] = "Face to path alone, hold and wrist read and good; a net and fifty minutes too few for two drills.",
        ["readings-that-do-not-fit"] = "Tilts and shifts contradict each other, a smash factor hardly any device gives: the plan doubts the readings.",
        ["reverse-tilt-and-a-weak-grip"] = "Comfort first, and beside it a grip that has its own consequences: two focuses in one week.",
        ["senior-whose-hips-hold-the-turn"] = "Sixty and over: a lower floor for the turn, hips before chest, speed as a consequence, a past limit.",
        ["slides-with-a-sore-back"] = "A limit of today: rehearsal only, one thing, all full speed withheld, tilt drills forbidden by the slide.",
        ["steep-iron-that-stands-up"] = "A chain of three patterns from one root, the last link reported under the middle one.",
        ["two-pieces-of-work-in-vain"] = "Drills that changed nothing do not come back, and the plan looks again before it asks for more.",
    };
}
