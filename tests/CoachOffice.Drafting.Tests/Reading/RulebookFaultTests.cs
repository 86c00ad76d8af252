using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests.Reading;

/// <summary>Each change of the small book makes one thing wrong; the fault must stand at its place and say what would be right.</summary>
public sealed class RulebookFaultTests
{
    [Theory]
    [InlineData("measures.yaml", "unit: cm", "unti: cm", "measures.yaml:30:5: measures[2]: 'unit' is missing here", "'unti' is not a name known here; nearest: unit")]
    [InlineData("measures.yaml", "unit: cm", "unit: cmm", "measures.yaml:33:11: measures[2].unit: 'cmm' is no unit; nearest: cm")]
    [InlineData("measures.yaml", "name: Head shift", "name: 12", "a text is expected, not the number 12 (put it in quotes)")]
    [InlineData("measures.yaml", "order: 30", "order: 20", "measures.yaml:32:12: measures[2].order: the order 20 is taken in measures.yaml:19; orders are unique")]
    [InlineData("measures.yaml", "view: device\n    moment: finish\n    positive: more", "view: side\n    moment: finish\n    positive: more", "'side' is not one of the words here", "one of: face-on, down-the-line, either, device")]
    [InlineData("measures.yaml", "plausible: [-40, 40]", "plausible: [-40]", "a pair [low, high] is expected, not a list")]
    [InlineData("measures.yaml", "error: { setup: 0.8, swing: 1.8 }", "error: { setup: -1, swing: 0 }", "setup is not below 0", "swing is above 0")]
    [InlineData("measures.yaml", "doubtful: [null, 1.51]", "doubtful: [null, 1.7]", "this lies beyond the plausible open to 1.56")]
    [InlineData("measures.yaml", "no-fault: [low]", "no-fault: [none]", "write low or high")]
    [InlineData("measures.yaml", "instruments: [video, sensor]", "instruments: [video, eye]", "'eye' can take every measure and is never listed")]
    [InlineData("measures.yaml", "ratio: [ball-speed, club-speed]", "ratio: [ball-speed]", "a sum has two or more parts, a ratio has two")]
    [InlineData("measures.yaml", "ratio: [ball-speed, club-speed]", "product: [ball-speed, club-speed]", "write one of { sum: [..] } and { ratio: [.., ..] }")]
    [InlineData("measures.yaml", "ratio: [ball-speed, club-speed]", "sum: [ball-speed, club-speed]", "ball-speed is in m/s, the sum in ratio; use one unit")]
    [InlineData("measures.yaml", "id: ball-speed", "id: club-speed", "measures.yaml:57:9: measures[4].id: the id 'club-speed' is taken in measures.yaml:44; give this one another")]
    [InlineData("measures.yaml", "id: smash-factor", "id: Smash_Factor", "is no id; write lower-case words joined by hyphens")]
    [InlineData("measures.yaml", "outcome: true", "outcome: yes", "true or false is expected, not the text 'yes'")]
    [InlineData("measures.yaml", "step: 1.2", "step: .nan", "a number is expected, not the text '.nan'")]
    [InlineData("measures.yaml", "step: 1.2", "step: 1e999", "this number is too large to be one")]
    [InlineData("measures.yaml", "step: 3", "step: 3\n    step: 4", "measures.yaml:41:5: measures[2].step: 'step' is written twice, first in line 40; keep one of them")]
    [InlineData("measures.yaml", "step: 3", "step: &a 3", "an anchor (&name) is not read here")]
    [InlineData("measures.yaml", "step: 3", "step: !!int 3", "a tag (!name) is not read here")]
    [InlineData("ranges.yaml", "iron: [9, 19]", "irons: [9, 19]", "ranges.yaml:4:5: ranges[0].irons: 'irons' is not a name known here; nearest: iron")]
    [InlineData("ranges.yaml", "iron: [9, 19]", "iron: [9, 70]", "9 to 70 reaches beyond the plausible -30 to 60 deg of impact-spine-tilt")]
    [InlineData("ranges.yaml", "aim: [20, 25]", "aim: [18, 25]", "the aim 18 to 25 lies outside the range 20 to 28")]
    [InlineData("ranges.yaml", "driver: [null, 3]", "driver: [null, null]", "both ends are open; write at least one")]
    [InlineData("ranges.yaml", "driver: [null, 3]", "driver: 3", "a pair [low, high] is expected, not the number 3")]
    [InlineData("ranges.yaml", "measure: head-shift, driver", "measure: impact-spine-tilt, driver", "the ranges of impact-spine-tilt stand in ranges.yaml:2; write them once")]
    [InlineData("ranges.yaml", "measure: head-shift, driver", "measure: ball-speed, driver", "ball-speed has no step, so a range would never be graded")]
    [InlineData("ranges.yaml", "high-by: 2", "high-by: 0", "this moves no edge")]
    [InlineData("patterns.yaml", "- address-spine-tilt.low", "- adress-spine-tilt.low", "patterns.yaml:7:9: patterns[0].when[0]: there is no measure 'adress-spine-tilt'; nearest: address-spine-tilt")]
    [InlineData("patterns.yaml", "at least moderate", "at least moderat", "patterns.yaml:8:46: patterns[0].when[1].any[0]: 'moderat' is no severity; nearest: moderate")]
    [InlineData("patterns.yaml", "impact-spine-tilt below 5]", "impact-spine-tilt belov 5]", "no condition is read from the text 'impact-spine-tilt belov 5'; write M.low")]
    [InlineData("patterns.yaml", "impact-spine-tilt below 5]", "impact-spine-tilt below 500]", "500 lies beyond the plausible -30 to 60 deg")]
    [InlineData("patterns.yaml", "read at least 2 times", "read at least no times", "a whole number from 1 to 1000 is expected, not 'no'")]
    [InlineData("patterns.yaml", "when: [head-shift.high,", "when: [pattern setup-tilt, head-shift.high,", "'pattern P' is read only under unless")]
    [InlineData("patterns.yaml", "pattern head-dives]", "pattern head-dive]", "patterns.yaml:10:43: patterns[0].unless[1]: there is no pattern 'head-dive'; nearest: head-dives")]
    [InlineData("patterns.yaml", "explains: []", "explains: []\n    unless: [pattern setup-tilt]", "the patterns hold each other back in a circle: head-dives -> setup-tilt -> head-dives")]
    [InlineData("patterns.yaml", "root: [head-shift.high]", "root: [address-spine-tilt.high]", "the root address-spine-tilt.high is not among 'when'")]
    [InlineData("patterns.yaml", "explains: []", "explains: [head-shift.high]", "the root head-shift.high is explained by the pattern itself")]
    [InlineData("patterns.yaml", "forbids: [impact-spine-tilt.high]", "forbids: [head-shift.out]", "head-shift.high is the root; its drills cannot be forbidden")]
    [InlineData("patterns.yaml", "needs: [club-speed]", "needs: [address-spine-tilt]", "the pattern would never fire")]
    [InlineData("patterns.yaml", "over: [head-dives]", "over: [setup-tilt]", "a pattern does not stand over itself")]
    [InlineData("patterns.yaml", "clubs: [driver]", "clubs: [drivers]", "'drivers' is not one of the words here; nearest: driver; one of: driver, fairway, hybrid, iron, wedge")]
    [InlineData("patterns.yaml", "forbids: [impact-spine-tilt.high]", "forbids: [impact-spine-tilt]", "a fault is expected, not the text 'impact-spine-tilt'; write measure.low")]
    [InlineData("drills.yaml", "lower-back^", "lower-bak^", "'lower-bak^' is no region of the body; nearest: lower-back")]
    [InlineData("drills.yaml", "hits: 9, of: 10", "hits: 9, of: 8", "9 of 8 cannot be reached")]
    [InlineData("drills.yaml", "steps: [Swing half]", "steps: []", "'steps' needs at least one item")]
    [InlineData("drills.yaml", "kit: [mirror, tee]", "kit: [mirror, mirror]", "this stands in the list already; leave it out")]
    [InlineData("drills.yaml", "cautions: [look-around]", "cautions: [look-arround]", "there is no caution 'look-arround'; nearest: look-around")]
    [InlineData("drills.yaml", "opposites: [impact-spine-tilt.high]", "opposites: [head-shift.high]", "head-shift.high is also what the drill trains")]
    [InlineData("drills.yaml", "when: limit-current", "when: limit-curent", "'limit-curent' is not one of the words here; nearest: limit-current")]
    [InlineData("drills.yaml", "{0} - see", "{1} - see", "only {0} is filled in a caution")]
    [InlineData("drills.yaml", "when: drill, text: Look around you", "when: indoors, text: Look around you", "look-around is not said with a drill")]
    [InlineData("drills.yaml", "when: drill, text: Look around you", "when: always, text: 'Look, {0}'", "'always' concerns nothing that could stand for {0}")]
    [InlineData("drills.yaml", "rooms: [home, range]", "rooms: [range]", "one rehearse drill here is for home, without kit and without load")]
    [InlineData("order.yaml", "half: [half-lean]", "half: [lean-in-mirror]", "the drill lean-in-mirror is for rehearse, not for half")]
    [InlineData("order.yaml", "half: [half-lean]", "half: [any-three]", "the drill any-three does not train address-spine-tilt.low")]
    [InlineData("order.yaml", "half: [half-lean], ", "", "so there is a half drill here")]
    [InlineData("order.yaml", "faults: [address-spine-tilt.low, head-shift.high]", "faults: [address-spine-tilt.low]", "patterns.yaml:20:11: patterns[1].root: the root head-shift.high has no progression")]
    [InlineData("order.yaml", "  - { id: lean-first", "  - { id: other, name: Other, faults: [head-shift.high], rehearse: [lean-in-mirror] }\n  - { id: lean-first", "head-shift.high has a progression in order.yaml:22; one fault, one progression")]
    [InlineData("order.yaml", "after: [address-spine-tilt, head-shift]", "after: [impact-spine-tilt]", "the work waits in a circle: impact-spine-tilt -> impact-spine-tilt; take one link out")]
    [InlineData("order.yaml", "goals:\n", "goals:\n  - { goal: distance, measures: [ball-speed] }\n", "distance has its measures already")]
    [InlineData("order.yaml", "dosage:", "dosages:", "order.yaml:1:1: file: no file of the rulebook has 'dosage'; one must", "'dosages' is no part of a rulebook; nearest: dosage")]
    [InlineData("order.yaml", "name: Small book", "# no name", "no file of the rulebook has 'name'; one must")]
    [InlineData("order.yaml", "  - { stage: play,", "  - { stage: mix,", "the stage mix stands here already; keep one")]
    [InlineData("order.yaml", "days: [7, 14]", "days: [14, 7]", "write [shortest, longest] in days")]
    [InlineData("order.yaml", "two-drills-below-minutes: 60", "two-drills-below-minutes: 20", "this is below one-drill-below-minutes")]
    [InlineData("order.yaml", "most-drills: 3", "most-drills: 2.5", "a whole number from 1 to 20 is expected, not 2.5")]
    [InlineData("cases.yaml", "pattern: head-dives", "pattern: head-dive", "cases.yaml:2:16: cases[0].pattern: there is no pattern 'head-dive'; nearest: head-dives")]
    [InlineData("cases.yaml", "club-speed: 40", "club-sped: 40", "cases.yaml:2:106: cases[0].readings.club-sped: there is no measure 'club-sped'; nearest: club-speed")]
    [InlineData("cases.yaml", "club-speed: 40", "club-speed: 4", "4 lies beyond the plausible 8 to 70 m/s of club-speed")]
    [InlineData("measures.yaml", "# measures, comment and all", "name: Other", "order.yaml:1:7: name: 'name' stands in measures.yaml:1 already; a rulebook has it once")]
    [InlineData("measures.yaml", "outcome: true", "outcome: true\n    scales-with-stature: true", "only lengths grow with stature, and m/s is none")]
    [InlineData("measures.yaml", "ratio: [ball-speed, club-speed]", "ratio: [smash-factor, club-speed]", "smash-factor is derived itself; build on measures that are read")]
    [InlineData("ranges.yaml", "{ measure: head-shift, driver: [null, 3] }", "{ measure: head-shift }", "no club has a range here; write one of: driver, fairway, hybrid, iron, wedge")]
    [InlineData("ranges.yaml", "high-by: 2 }", "high-by: 2 }\n  - { measure: head-shift, from-age: 60, low-by: 1 }", "is adjusted twice")]
    [InlineData("patterns.yaml", "explains: [impact-spine-tilt.low]", "explains: [impact-spine-tilt.low]\n    explains-if-present: [impact-spine-tilt.low]", "impact-spine-tilt.low is under explains already; leave it out here")]
    [InlineData("patterns.yaml", "over: [head-dives]", "over: [head-dives]\n    before: [setup-tilt]", "a pattern does not come before itself")]
    [InlineData("patterns.yaml", "{ same-side: [head-shift, impact-spine-tilt] }", "{ same-side: [head-shift] }", "'same-side' needs at least two items")]
    [InlineData("patterns.yaml", "{ same-side: [head-shift, impact-spine-tilt] }", "{ any: [head-shift.high, club-speed.low], same-side: [head-shift, club-speed] }", "write one of { any: [..] } and { same-side: [M1, M2] }")]
    [InlineData("order.yaml", "goals:\n", "  - { work: impact-spine-tilt, after: [head-shift], because: Again }\ngoals:\n", "impact-spine-tilt waits for head-shift already; write it once")]
    [InlineData("order.yaml", "driver-only: [impact-spine-tilt]", "driver-only: [club-speed]", "serves the goal with any club already; leave it out here")]
    [InlineData("order.yaml", "  - { id: lean-first", "  - { id: other, name: Other, faults: [club-speed.low] }\n  - { id: lean-first", "no stage has drills; write one of: rehearse, half, full, mix, play")]
    [InlineData("order.yaml", "full: [half-lean], ", "", "so there is a full drill here")]
    [InlineData("order.yaml", "    - { stage: play, reps-per-minute: 1, most-reps: 60, days: [14, 14] }\n", "", "every stage needs a dosage; missing: play")]
    [InlineData("order.yaml", "    - { stage: play, reps-per-minute: 1, ", "    - { stage: play, reps-per-minute: 0, ", "0 a minute is not possible; write a number above 0, at most 60")]
    [InlineData("cases.yaml", "cases:\n", "cases:\n  - { pattern: head-dives, name: dives, club: driver, readings: { club-speed: 40 }, fires: false, why: it is not }\n", "head-dives has a case of this name already; give this one another")]
    public void A_fault_names_its_place_and_what_would_be_right(string file, string old, string replacement, params string[] expected)
    {
        var faults = RulebookReader.Load(SmallBook.With(file, old, replacement)).Faults.Select(f => f.ToString()).ToList();

        foreach (var part in expected) Assert.Contains(faults, fault => fault.Contains(part, StringComparison.Ordinal));
        Assert.True(faults.Count <= 4, string.Join("\n", faults));
    }

    [Theory]
    [InlineData("drills.yaml", "rooms: [home, range]", "rooms: [range]", "rehearse")]
    [InlineData("order.yaml", "half: [half-lean], ", "", "half")]
    [InlineData("order.yaml", "full: [half-lean], ", "", "full")]
    public void A_duty_a_ladder_does_not_keep_is_told_at_its_rung(string file, string old, string replacement, string rung)
    {
        var faults = RulebookReader.Load(SmallBook.With(file, old, replacement)).Faults;

        Assert.Contains(faults, fault => fault.Path == $"progressions[0].{rung}" && fault.Message.Contains("is the root of a pattern", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "file: the file is empty")]
    [InlineData("# only a comment\n", "file: the file is empty")]
    [InlineData("- a\n- b\n", "a mapping with measures, patterns, drills ... is expected, not a list")]
    [InlineData("name: a\n---\nname: b\n", ":2:1: file: a second document begins here")]
    [InlineData("name: *a\n", "an alias (*name) is not read here")]
    [InlineData("measures: {}\n", "a list of measures is expected, not a mapping")]
    [InlineData("? [a]\n: b\n", "a name is expected here, not a list or mapping")]
    [InlineData("name: \"\\uD800\"\n", "this is not YAML as read here")]
    [InlineData("name: a\nnote: \u0007b\n", ":2:7: file: the control character U+0007 is not read here")]
    [InlineData("!!](.\n.@(", "this is not YAML as read here: soon behind this place the text breaks off oddly")]
    [InlineData("a: [\n-\r- { b: c\n", "this is not YAML as read here")]
    [InlineData("name: [\n", "this is not YAML as read here")]
    public void A_file_that_is_no_rule_file_is_refused_in_a_sentence(string content, string expected)
    {
        var faults = RulebookReader.Read(SmallBook.WithFile("more.yaml", content)).Faults;

        Assert.Contains(faults, fault => fault.File == "more.yaml" && fault.ToString().Contains(expected, StringComparison.Ordinal));
    }

    [Fact]
    public void Deep_nesting_is_refused_quickly()
    {
        var fault = Assert.Single(RulebookReader.Read(SmallBook.WithFile("more.yaml", "name: " + new string('[', 500_000))).Faults, f => f.File == "more.yaml");

        Assert.Contains("nested deeper than 32 levels", fault.Message, StringComparison.Ordinal);
    }
}
