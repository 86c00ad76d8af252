namespace CoachOffice.Drafting.Tests.Golden;

/// <summary>Whole invented lessons whose drafts are kept, each with what an instructor sees in the readings and why the work comes in this order.</summary>
internal static class GoldenTable
{
    public static IReadOnlyDictionary<string, string> Why { get; } = new SortedDictionary<string, string>(StringComparer.Ordinal)
    {
        ["aim-makes-the-path"] =
            "A beginner's open shoulders point where the club then swings; shoulders at impact are fine, so nothing but the aim is changed, and path and shaft are read again after it.",
        ["bends-low-and-comes-up"] =
            "So bent at address that the chest must rise, with hips and distance in order: the bend is put right standing still, and the low point, which nothing read explains, has a place beside it.",
        ["bowed-wrist-and-a-driven-handle"] =
            "A bowed wrist shuts the face, the handle is dragged ahead to hold it off, and that drives the club down: three links, so even an elite player with all the time works at the first one only.",
        ["chest-that-waits-too-long"] =
            "An old cure overdone: keeping the back to the target made it worse before, and aim, hips and shaft are fine, so the chest goes through and path and shoulders at impact follow.",
        ["cupped-wrist-opens-the-face"] =
            "The hold is good and the wrist folds: face and handle answer it, the wrist angle must wait for it, and a wrist that once hurt gets nothing that loads it more than a swing.",
        ["dives-with-the-driver"] =
            "One early cause behind six findings over three moments: the head dives, tilt, shaft, path and strike pay for it, and more speed waits until it is quiet.",
        ["driver-ball-past-the-lead-foot"] =
            "The ball lies past the lead foot: the club climbs, swings across and the head seems far behind. Moving a ball is the cheapest change there is, so nothing else is touched, for a sixteen-year-old with a guardian.",
        ["far-over-and-digging"] =
            "Two causes of one dig: the shaft comes down steep, and all the pressure is on the lead foot. The steep shaft is earlier, so it is first; the pressure is beside it, as neither leads to the other.",
        ["five-minutes-a-week"] =
            "The ball far back explains the blow from above, but five minutes are too little for any drill: the fault stays named and the plan says so instead of inventing a session.",
        ["flies-well-leave-it"] =
            "Path, face and low point are good: a strong hold, a moving head and late hips do the ball no harm and are left alone.",
        ["garden-without-kit"] =
            "The hips slide away going back; head, hips, pressure and low point all arrive late because of it. One thing, in a garden, for a fifteen-year-old with no kit and no ball.",
        ["head-drifts-forward-going-back"] =
            "The head goes forward while the club goes back, so shaft and blow come from above; the spine itself does not lean, or that would be first. Gentle turns only, for a back that once hurt.",
        ["head-first-and-no-tilt-read"] =
            "Only the head was read, and it gets there first: enough to work on it, on a course, without a ball; what the tilt does is not claimed, nor asked: with or without it the head is the root and the work the same.",
        ["hips-go-forward-on-the-way-back"] =
            "Hips that go forward while the club goes back have to leave again: pressure and low point show it. A beginner at home gets the slow part and hears that the rest waits for a range.",
        ["hips-spin-and-the-club-follows"] =
            "Shoulders and aim are fine, the hips spin on the spot: the path crosses and the pressure stays back. Drills that keep the trail foot down would keep it back further, so the lead foot lands first and the belt turns after.",
        ["hips-that-come-home-late"] =
            "The picture of the top is fine, yet the hips went further and are not home at the ball: the slide is first because it is earlier, getting to the lead foot is its other half.",
        ["hips-that-stay-behind"] =
            "Head, set-up and way back are in order and the hips stay: so tilt and pressure are missing at the ball. On the course only swings without a ball, and no step for a knee that once hurt.",
        ["hurried-start-down-by-the-clock"] =
            "Only the time down was taken, and it is very short; the wrists let go in it, while shaft and handle are fine. The start down is calmed before anyone talks of wrist angle.",
        ["hurried-start-down-by-the-ratio"] =
            "The way down is a snatch; head, wrists and tilt answer it in a chain. Tempo alone would be style, with these answers it comes before work on the head.",
        ["inches-and-miles-with-a-wedge"] =
            "Other units, a tall student's ranges, tempo and smash made of their parts: the ball is too far forward, and low point and blow say so. The wrist angle waits for its turn, and a quick tempo that nothing answers is style.",
        ["iron-ball-behind-the-middle"] =
            "The ball is behind the middle: met early, still going down and out. Aim, handle and low point are fine, so only the ball moves; what the path is afterwards is read again.",
        ["junior-crowding-the-ball"] =
            "Twelve years old and much too near the ball: hips, chest and a heel strike make room. One thing, ten quiet minutes at home, and the hips are not spoken of while the distance is wrong.",
        ["junior-with-a-closing-face"] =
            "Eleven years old and a beginner: the hold shuts the face and the stance locks the hips; one thing, short sessions, and the hold before the stance because direction is the goal.",
        ["leans-back-from-top-to-ball"] =
            "The lean is there at the top, grows on the way down and ends in turf before the ball: top before head before tilt, a chain of four with a past back limit in mind.",
        ["level-at-address-and-a-diving-head"] =
            "Tilt has two causes here: a level start and a head that dives. The start is first because it stands still and costs little, the head second, as the trade has it.",
        ["looked-at-again-and-nearly-there"] =
            "Looked at again after work: the head is within a step of good, so the gate is now the edge itself; what helped stays, what changed nothing in six sessions is gone, and speed still waits. It begins with rehearsal again: that a drill helped is no gate passed, and where the student stands on the ladder the coach sees in the plan before.",
        ["narrow-feet-and-a-travelling-head"] =
            "Feet so close that the turn tips the body: the head leaves, pressure and low point stay behind. The base first; a head that still travels on it would be next.",
        ["nine-years-old-without-a-height"] =
            "A child's centimetres mean nothing without a height: no work is invented, the height is asked for, and what the ball does.",
        ["no-side-bend-and-down-on-the-peg"] =
            "Everything before the ball is in order, the trail side does not bend, and the club chops down on a peg, high on the face. The blow reaches more of what the student wants, so it is first; the bend has its place beside it.",
        ["nothing-but-a-fast-swing-wanted"] =
            "Ball, strike, top and turn are good and the only thing short is speed: then speed itself may be worked on, in steps.",
        ["one-reading-only"] =
            "A missing tilt with nothing read before it: provisional, slow work only, rehearsal for a back that hurts today, and the readings that would tell.",
        ["one-swing-each-all-at-the-edge"] =
            "One swing each, all at the edge: nothing beyond reading error, so no work, but how many more swings, or which camera.",
        ["only-the-face-disagrees"] =
            "Path, hold, wrist and face at the top are good; only the face at the ball disagrees. A net and twenty-five minutes give one drill at a time.",
        ["open-face-answered-with-a-throw"] =
            "Hold and wrist are good and the face is open at the top: the wrists throw to close it and it still comes open. The face first, at home before a mirror; lean and angle are its answers.",
        ["reaches-and-finds-the-toe"] =
            "Far from the ball, strike toward the toe, ball speed lost: a chain of two that begins with where one stands. Six marks are too few to call the swing sound.",
        ["readings-that-do-not-fit"] =
            "Tilts and shifts contradict each other and hardly any device gives such a smash factor: the plan works slowly at what is sure and doubts the readings.",
        ["reverse-tilt-and-a-weak-grip"] =
            "The spine leans toward the target at the top: comfort first. Beside it a weak hold opens the face, with answers of its own, so two focuses in one week.",
        ["rushed-in-both-directions"] =
            "Both times are short and their ratio hides it: the turn is not finished because the way back has no time. Fourteen and a beginner: a count, and nothing about turning.",
        ["senior-whose-hips-hold-the-turn"] =
            "Seventy-one: a lower floor for the turn, hips that stay home and hold the chest, speed as a consequence. The hips first, gently, because of a hip that once hurt.",
        ["sets-up-leaning-back"] =
            "Leaning back before anything moves, and still leaning at the ball: the set-up is cheap and first, and nothing that keeps the body back is offered.",
        ["short-turn-with-sore-ribs"] =
            "A short chest turn costs the speed that is wanted, but the ribs hurt today: a turn on a breath and nothing else, and a licensed professional before more.",
        ["shoulders-open-from-early-to-late"] =
            "Open early, open at the ball: one thing read twice. Path and shaft are not clearly out, so nothing is made of them but a request for more swings.",
        ["shut-at-the-top-held-off-at-the-ball"] =
            "Hold and wrist are good, the face is shut at the top; handle, hips and path all hold it off, and it still closes. Less lean first would send the ball round the corner.",
        ["slides-with-a-sore-back"] =
            "The hips run on and leave the chest behind; a back that hurts today leaves rehearsal of one thing, and tilt drills would lengthen the gap.",
        ["slow-all-the-way-down"] =
            "Turn, top and strike are in order and the club takes its time: for distance at sixty-six a brisker count is the gentlest way, before any talk of turning more.",
        ["sound-swing-struck-off-the-middle"] =
            "Everything measured is sound and fourteen marks lie toward the heel and low: distance from the ball and height of the brush, not the swing.",
        ["steep-iron-that-stands-up"] =
            "One steep shaft, three answers: across, thrown and standing up, the heel strike being the last link. The shaft first, or each cure brings the next fault.",
        ["strong-hand-drags-the-handle"] =
            "The hold is far over and the handle dragged ahead so that the face stays square. Path and face are fine today; the hand goes first, with a warning of early curves.",
        ["stuck-behind-hips-that-stop"] =
            "The hips stop, the hands pass them, and the club is far behind as well. The hips lead to more of it, so they are first; drills that flatten the shaft are left out.",
        ["too-little-time-going-back"] =
            "The way down has its time, the way back has not: turn unfinished, wrists at the edge. A count, at home, in thirty-five minutes a week.",
        ["turned-further-than-there-is-time"] =
            "Hips and chest turn so far that neither is back in time: wrists, hips and handle at the ball all show it. Less turn of the hips carries the chest along, so it is one thing.",
        ["two-feet-too-far-apart"] =
            "Feet far apart lock the hips: turn and pressure are short. A narrower stance in half an hour a week, before anyone asks a hip that once hurt to turn.",
        ["two-pieces-of-work-in-vain"] =
            "Drills for two faults changed nothing: they do not come back, and the plan looks again from another view before it asks for more.",
        ["upright-start-and-a-flat-club"] =
            "So upright that the club must swing low around: it falls behind and comes from inside. Bend is set standing still, so it is first in the chain.",
        ["wrist-angle-spent-early"] =
            "Face, hold, wrist, shaft and hips were all looked at and are fine: only then is the spent angle the cause of the lost lean and the early low point. In a garden, without kit.",
    };
}
