namespace CoachOffice.Drafting.Tests.Reading;

/// <summary>The files of the small book.</summary>
internal static class SmallBookText
{
    public const string Measures = """
        # measures, comment and all
        measures:
          - id: address-spine-tilt
            name: Spine tilt at address
            order: 10
            unit: deg
            view: face-on
            moment: address
            positive: away from the target
            negative: toward the target
            how: Belt to neck, against the plumb line
            plausible: [-30, 60]
            error: { setup: 1.5, swing: 2.5 }
            step: 4
            instruments: [video, sensor]
            style-only: true
          - id: impact-spine-tilt
            name: Spine tilt at impact
            order: 20
            unit: deg
            view: face-on
            moment: impact
            positive: away from the target
            how: Belt to neck, against the plumb line
            plausible: [-30, 60]
            error: { setup: 1.5, swing: 2.5 }
            step: 4
            instruments: [video]
            needs-fast-video: true
          - id: head-shift
            name: Head shift
            order: 30
            unit: cm
            view: face-on
            moment: top
            positive: toward the target
            how: Centre of the head
            plausible: [-40, 40]
            error: { setup: 0.8, swing: 1.8 }
            step: 3
            instruments: [video]
            no-fault: [low]
            scales-with-stature: true
          - id: club-speed
            name: Club speed
            order: 40
            unit: m/s
            view: device
            moment: finish
            positive: faster
            how: As the radar says
            plausible: [8, 70]
            error: { setup: .2, swing: .8 }
            step: 1.2
            instruments: [radar]
            outcome: true
          - id: ball-speed
            name: Ball speed
            order: 50
            unit: m/s
            view: device
            moment: finish
            positive: faster
            how: As the radar says
            plausible: [8, 100]
            error: { setup: .2, swing: 1.2 }
            instruments: [radar]
          - id: smash-factor
            name: Ball speed to club speed
            order: 60
            unit: ratio
            view: device
            moment: finish
            positive: more
            how: Follows from the two speeds
            plausible: [null, 1.56]
            doubtful: [null, 1.51]
            error: { setup: .01, swing: .02 }
            instruments: [radar]
            derived: { ratio: [ball-speed, club-speed] }
        """;

    public const string Ranges = """
        ranges:
          - measure: impact-spine-tilt
            driver: { range: [20, 28], aim: [20, 25] }
            iron: [9, 19]
          - { measure: address-spine-tilt, source: "Someone 2001", driver: [4, 12] }
          - { measure: head-shift, driver: [null, 3] }
          - { measure: club-speed, driver: goal }
        adjustments:
          - { measure: head-shift, from-age: 60, high-by: 2 }
        """;

    public const string Patterns = """
        patterns:
          - id: setup-tilt
            name: Level at address
            precedence: 17
            clubs: [driver]
            when:
              - address-spine-tilt.low
              - any: [impact-spine-tilt.low at least moderate, impact-spine-tilt below 5]
            needs: [club-speed]
            unless: [head-shift in range, pattern head-dives]
            root: address-spine-tilt.low
            explains: [impact-spine-tilt.low]
            over: [head-dives]
            because: You start level
            rationale: No lean to keep
          - id: head-dives
            name: Head dives
            precedence: 35
            when: [head-shift.high, head-shift read at least 2 times, at least 1 others in range, { same-side: [head-shift, impact-spine-tilt] }]
            root: [head-shift.high]
            explains: []
            explains-if-present: [impact-spine-tilt.out]
            forbids: [impact-spine-tilt.high]
            because: The head goes first
            rationale: It takes the tilt along
            debatable: The reverse is seen too
            source: Someone 2002
        """;

    public const string Drills = """
        drills:
          - id: lean-in-mirror
            name: Lean in the mirror
            trains: [address-spine-tilt.low, head-shift.high]
            stages: [rehearse]
            rooms: [home, range]
            club: none
            steps: [Stand, Lean]
            cue: shirt buttons over the shoe
            done-when: { hits: 9, of: 10, what: leans that look right }
          - id: half-lean
            name: Half swings from a lean
            trains: [address-spine-tilt.low, head-shift.high]
            stages: [half, full]
            kit: [mirror, tee]
            rooms: [range, net]
            club: short
            loads: [normal-swing, lower-back^]
            from-age: 13
            levels: [improver, elite]
            steps: [Swing half]
            cue: brush the grass
            most-reps: 20
            done-when: { hits: 8, of: 10, what: brushes }
            opposites: [impact-spine-tilt.high]
            cautions: [look-around]
          - { id: any-three, name: Any three, trains: [], stages: [mix, play], rooms: [range], club: full, steps: [Hit], cue: one target, done-when: { hits: 6, of: 10, what: hits } }
        cautions:
          - { id: look-around, when: drill, text: Look around you }
          - { id: see-someone, when: limit-current, text: "{0} - see a licensed professional" }
        """;

    public const string Order = """
        name: Small book
        train-after:
          - { work: impact-spine-tilt, after: [address-spine-tilt, head-shift], because: The start comes first }
        goals:
          - { goal: distance, measures: [club-speed], driver-only: [impact-spine-tilt] }
        dosage:
          most-drills: 3
          one-drill-below-minutes: 30
          two-drills-below-minutes: 60
          fewest-reps: 15
          shortest-session-minutes: 6
          sessions-a-week: 3
          most-full-speed-balls: 60
          look-again-after-days: 28
          stages:
            - { stage: rehearse, reps-per-minute: 6, most-reps: 100, days: [4, 7] }
            - { stage: half, reps-per-minute: 4, most-reps: 100, days: [7, 14] }
            - { stage: full, reps-per-minute: 2, most-reps: 60, days: [14, 21] }
            - { stage: mix, reps-per-minute: 1.3, most-reps: 60, days: [14, 14] }
            - { stage: play, reps-per-minute: 1, most-reps: 60, days: [14, 14] }
        progressions:
          - { id: lean-first, name: Lean first, faults: [address-spine-tilt.low, head-shift.high], rehearse: [lean-in-mirror], half: [half-lean], full: [half-lean], mix: [any-three], play: [any-three] }
        """;

    public const string Cases = """
        cases:
          - { pattern: head-dives, name: dives, club: driver, readings: { head-shift: { value: 9, readings: 3 }, club-speed: 40, impact-spine-tilt: 36, address-spine-tilt: 8 }, club-speed-goal: 45, fires: true, why: it is out }
        """;
}
