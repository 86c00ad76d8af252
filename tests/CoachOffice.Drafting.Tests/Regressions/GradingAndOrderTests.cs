using System.Text;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Reading.Lessons;

namespace CoachOffice.Drafting.Tests.Regressions;

/// <summary>Drafts that once graded, ordered or warned wrongly.</summary>
public sealed class GradingAndOrderTests
{
    [Fact]
    public void A_known_frame_rate_takes_the_place_of_the_usual_error_of_a_time()
    {
        // Own arithmetic: two frames, each even over its width, doubled for picking: 2 * sqrt(2 / 12) / 240 = .003402.
        var time = HouseBook.Value("downswing-time", .25, 1);
        Assert.Equal(.003402, ReadingError.Of(HouseBook.Book.Find(time.Measure)!, time with { FrameRate = 240 }).Setup, 6);
    }

    [Fact]
    public void A_tempo_made_of_two_times_uses_those_times()
    {
        // Own arithmetic: B .9, D .45, f 60: 2/60 * sqrt((1/.9^2 + (1/.9 + 1/.45)^2 + 1/.45^2)/12) = .040005, doubled .080010; with .1 in quadrature .128069; swing .35.
        var facts = HouseBook.Lesson(Club.Driver, HouseBook.Value("backswing-time", .9, 1) with { FrameRate = 60 }, HouseBook.Value("downswing-time", .45, 1) with { FrameRate = 60 });
        var tempo = LessonGrading.Grade(HouseBook.Book, facts).Single(f => f.Measure.Id.Value == "tempo-ratio");
        Assert.Equal(Math.Sqrt((.128069 * .128069) + (.35 * .35)), tempo.StandardError, 4);
    }

    [Fact]
    public void What_follows_from_two_readings_may_be_a_strength() =>
        Assert.Contains("smash-factor", Draft(HouseBook.Value("club-speed", 45), HouseBook.Value("ball-speed", 66)).Strengths);

    [Fact]
    public void A_grip_alone_holds_no_other_work_up()
    {
        var draft = Draft(HouseBook.Value("lead-hand-grip", 90), HouseBook.Value("lag-angle", 125), HouseBook.Value("downswing-head-shift", 17), HouseBook.Value("pelvis-toward-ball", 12));
        Assert.Contains(draft.Parked, p => p.Fault == FaultId.Parse("lead-hand-grip.high") && p.Reason == ParkedReason.NoHarmShown);
        Assert.DoesNotContain(draft.Parked, p => p.By == FaultId.Parse("lead-hand-grip.high"));
    }

    [Fact]
    public void Nor_does_it_keep_a_swing_from_being_left_alone() =>
        Assert.Empty(Draft(HouseBook.Value("lead-hand-grip", 90), HouseBook.Value("club-path", 0), HouseBook.Value("face-to-path", 0), HouseBook.Value("contact-offset-toe", 0, 10), HouseBook.Value("impact-pelvis-open", 8)).Focus);

    [Fact]
    public void A_drill_nobody_knows_is_warned_of_with_the_nearest_name_however_far()
    {
        const string lesson = """
            { "asOf": "2026-05-04", "club": "driver", "readings": [],
              "student": { "hand": "right", "level": "improver", "birthYear": 1988, "minutesPerWeek": 90, "daysPerWeek": 3, "room": "range" },
              "tried": [ { "drill": "xxxxxxxxxxxxxxxxxxxxxxxx", "sessions": 6, "outcome": "no-change" } ] }
            """;
        var read = LessonReader.Read("lesson.json", Encoding.UTF8.GetBytes(lesson), HouseBook.Book);
        Assert.Empty(read.Faults);
        Assert.Contains("; nearest: ", Assert.Single(read.Warnings).Message, StringComparison.Ordinal);
    }

    private static Draft Draft(params IReadOnlyList<MeasuredValue> readings) => Drafter.Draft(HouseBook.Compiled, HouseBook.Lesson(Club.Driver, readings));
}
