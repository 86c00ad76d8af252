namespace CoachOffice.Drafting.Tests.Checks;

/// <summary>The dosage of the tiny rulebook.</summary>
internal static class UsualDosage
{
    public const string Text = """
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
        """;
}
