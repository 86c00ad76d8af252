using CoachOffice.Domain.Measuring;

namespace CoachOffice.SeedDemo.Swings;

/// <summary>Ways of swinging that the demo's people have; sizes are invented.</summary>
internal static class SwingHabits
{
    private static readonly Dictionary<string, SwingHabit> All = Made().ToDictionary(h => h.Name, StringComparer.Ordinal);

    /// <summary>The habit of a name.</summary>
    public static SwingHabit Of(string name) => All[name];

    /// <summary>Habits that can show with a club.</summary>
    public static IEnumerable<SwingHabit> For(Club club) =>
        All.Values.Where(h => h.Faults.Count > 0 && (h.Name is "ball-back-driver" or "chopped-driver" ? club == Club.Driver : club != Club.Driver || !h.Name.StartsWith("ball-", StringComparison.Ordinal)));

    private static IEnumerable<SwingHabit> Made() => [.. SetUp(), .. GoingBack(), .. ComingDown(), .. ThroughTheBall()];

    private static IEnumerable<SwingHabit> SetUp() =>
    [
        Habit("aim-makes-path", [Low("aim-shoulders", 2.6), Low("club-path", 3)]),
        Habit("ball-back-driver", [Low("ball-forward-of-centre", 2), Low("attack-angle", 2.6), Low("impact-head-behind-ball", 1.2)]),
        Habit("ball-forward-off-turf", [High("ball-forward-of-centre", 2), Low("low-point", 1.9)]),
        Habit("ball-back-iron", [Low("ball-forward-of-centre", 1.8), Low("attack-angle", 2.2)]),
        Habit("setup-tilt", [Low("address-spine-tilt", 2), Low("impact-spine-tilt", 2)]),
        Habit("setup-tilt-too-much", [High("address-spine-tilt", 2), Low("low-point", 2), Low("weight-forward-impact", 1.6)]),
        Habit("stance-too-wide", [High("stance-width", 2), Low("downswing-pelvis-shift", 1.5), Low("weight-forward-impact", 1.5)]),
        Habit("stance-too-narrow", [Low("stance-width", 1.9), Low("backswing-head-shift", 1.6)], "contact-offset-toe"),
        Habit("weak-grip-open", [Low("lead-hand-grip", 1.8), High("face-to-path", 2.8), Low("top-face", 1.3)]),
        Habit("strong-grip-closed", [High("lead-hand-grip", 2), Low("face-to-path", 2.8)]),
    ];

    private static IEnumerable<SwingHabit> GoingBack() =>
    [
        Habit("reverse-tilt", [Low("top-spine-tilt", 2.6), High("downswing-head-shift", 1.7), Low("weight-forward-impact", 1.5)]),
        Habit("hips-hold-turn", [Low("top-pelvis-turn", 1.9), Low("top-shoulder-turn", 1.9)]),
        Habit("cupped-open", [Low("top-lead-wrist", 1.9), Low("top-face", 1.6), High("face-to-path", 2.4)], "lead-hand-grip"),
        Habit("short-turn", [Low("top-shoulder-turn", 2), Low("club-speed", 3)], "top-pelvis-turn"),
        Habit("sway", [Low("backswing-pelvis-shift", 2.2), Low("weight-forward-impact", 1.6), Low("low-point", 1.7)]),
        Habit("head-off-ball", [Low("backswing-head-shift", 2.1), Low("low-point", 1.9)], "backswing-pelvis-shift"),
        Habit("early-lead-lean", [High("backswing-head-shift", 2.1), Low("attack-angle", 2.2)], "top-spine-tilt"),
        Habit("quick-down", [High("tempo-ratio", 2), High("downswing-head-shift", 1.7)]),
        Habit("quick-back", [Low("tempo-ratio", 1.9), High("lag-angle", 1.6)]),
        Habit("open-face-no-lean", [Low("top-face", 1.9), Low("impact-shaft-lean", 1.7)], "lead-hand-grip", "top-lead-wrist"),
    ];

    private static IEnumerable<SwingHabit> ComingDown() =>
    [
        Habit("body-outruns", [High("downswing-head-shift", 2.2), Low("impact-spine-tilt", 2)]),
        Habit("hanging-pelvis", [Low("downswing-pelvis-shift", 2), Low("impact-spine-tilt", 1.8)]),
        Habit("lost-side-bend", [Low("impact-spine-tilt", 2.2)], "downswing-pelvis-shift"),
        Habit("shoulders-open-early", [High("shoulders-open-down", 2), High("shaft-over-plane", 1.7), Low("club-path", 2.6)]),
        Habit("out-to-in-arms", [High("shaft-over-plane", 2), Low("club-path", 2.8)], "impact-shoulders-open"),
        Habit("steep-then-throw", [High("shaft-over-plane", 2), High("lag-angle", 1.7), Low("impact-shaft-lean", 1.6)]),
        Habit("early-throw", [High("lag-angle", 2.1), Low("impact-shaft-lean", 1.7)], "shaft-over-plane"),
        Habit("stuck-under", [Low("shaft-over-plane", 2), High("club-path", 2.8), Low("impact-pelvis-open", 1.6)]),
    ];

    private static IEnumerable<SwingHabit> ThroughTheBall() =>
    [
        Habit("stand-up", [High("pelvis-toward-ball", 2.3), Low("forward-bend-change", 1.8)], "ball-distance"),
        Habit("slide", [High("downswing-pelvis-shift", 2.1), High("impact-spine-tilt", 1.9)]),
        Habit("stalled-body", [Low("impact-pelvis-open", 2), Low("impact-shaft-lean", 1.7), High("club-path", 2.8)]),
        Habit("path-good-face-off", [High("face-to-path", 3.4)], "lead-hand-grip"),
        Habit("chopped-driver", [Low("attack-angle", 3)], "ball-forward-of-centre"),
        Habit("strike-only", [High("contact-offset-toe", 2.6)], "pelvis-toward-ball", "shaft-over-plane"),
        Habit("strike-height-only", [Low("contact-offset-high", 2.6)], "pelvis-toward-ball", "shaft-over-plane"),
        Habit("sound", [], "low-point", "contact-offset-toe"),
    ];

    private static SwingHabit Habit(string name, IReadOnlyList<SwingFault> faults, params string[] also) => new(name, faults, also);

    private static SwingFault Low(string measure, double steps) => new(measure, Side.Low, steps);

    private static SwingFault High(string measure, double steps) => new(measure, Side.High, steps);
}
