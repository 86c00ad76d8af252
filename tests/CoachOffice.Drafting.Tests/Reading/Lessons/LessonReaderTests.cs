using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Reading.Lessons;
using NodaTime;

namespace CoachOffice.Drafting.Tests.Reading.Lessons;

public sealed class LessonReaderTests
{
    [Fact]
    public void A_sound_lesson_is_read_whole()
    {
        var facts = SmallLesson.Read(SmallLesson.Json).Value;

        Assert.Equal(new LocalDate(2026, 5, 4), facts.AsOf);
        Assert.Equal(37, facts.Age);
        Assert.Equal(Club.Driver, facts.Club);
        Assert.Equal([Goal.Distance, Goal.Consistency], facts.Student.Goals);
        Assert.Equal([Kit.AlignmentStick, Kit.Mirror], facts.Student.Kit);
        Assert.Equal([new BodyLimit(Region.LowerBack, LimitStatus.Past)], facts.Student.Limits);
        Assert.Equal(180, facts.Student.HeightCm);
        Assert.Equal([new TriedDrill(DrillId.From("half-lean"), 6, TriedOutcome.NoChange)], facts.Tried);
        Assert.Equal(240, facts.Readings.Single(r => r.Measure.Value == "impact-spine-tilt").FrameRate);
    }

    [Fact]
    public void Readings_are_sorted_by_measure_and_in_its_own_unit()
    {
        var head = SmallLesson.Read(SmallLesson.Json).Value.Readings[0];

        Assert.Equal("head-shift", head.Measure.Value);
        Assert.Equal(new Quantity(5.08, Unit.Centimetre), head.Value);
        Assert.Equal(1, head.Readings);
        Assert.Equal(Instrument.Video, head.Instrument);
        Assert.Null(head.FrameRate);
    }

    // 1 in = 2.54 cm exactly, 1 km/h = 1000 m in 3600 s.
    [Theory]
    [InlineData("\"value\": 2, \"unit\": \"in\"", "\"value\": 3, \"unit\": \"in\"", "head-shift", 7.62)]
    [InlineData("\"value\": 2, \"unit\": \"in\"", "\"value\": -1.3, \"unit\": \"in\"", "head-shift", -3.302)]
    [InlineData("\"measure\": \"head-shift\", \"value\": 2, \"unit\": \"in\"", "\"measure\": \"club-speed\", \"value\": 162, \"unit\": \"km/h\"", "club-speed", 45)]
    public void A_converted_value_carries_no_dust_of_the_arithmetic(string old, string replacement, string measure, double expected) =>
        Assert.Equal(expected, SmallLesson.With(old, replacement).Value.Readings.Single(r => r.Measure.Value == measure).Value.Value);

    // 1 mph = 0.44704 m/s exactly (international mile and second).
    [Fact]
    public void A_goal_in_miles_an_hour_becomes_metres_a_second() =>
        Assert.Equal(46.9392, SmallLesson.Read(SmallLesson.Json).Value.Student.ClubSpeedGoal!.Value.Value, 12);

    [Fact]
    public void What_may_be_left_out_has_its_default()
    {
        var facts = SmallLesson.Read(
            """
            { "asOf": "2026-05-04", "club": "iron", "readings": [],
              "student": { "hand": "left", "level": "beginner", "birthYear": 2012, "minutesPerWeek": 30, "daysPerWeek": 2, "room": "home" } }
            """).Value;

        Assert.Empty(facts.Readings);
        Assert.Empty(facts.Tried);
        Assert.Empty(facts.Student.Goals);
        Assert.Empty(facts.Student.Kit);
        Assert.Empty(facts.Student.Limits);
        Assert.Null(facts.Student.ClubSpeedGoal);
        Assert.Null(facts.Student.HeightCm);
    }

    [Fact]
    public void A_drill_the_rulebook_does_not_know_is_taken_with_a_warning()
    {
        var result = SmallLesson.With("\"drill\": \"half-lean\"", "\"drill\": \"half-leen\"");

        Assert.True(result.Succeeded);
        Assert.Equal(
            "lesson.json:8:25: tried[0].drill: the rulebook has no drill 'half-leen'; taken as tried all the same; nearest: half-lean",
            Assert.Single(result.Warnings).ToString());
    }

    [Theory]
    [InlineData("\"asOf\": \"2026-05-04\"", "\"asOf\": \"4 May 2026\"", "lesson.json:1:11: asOf: '4 May 2026' is no day from 1990 to 2199; write it as 2026-05-04")]
    [InlineData("\"asOf\": \"2026-05-04\"", "\"asOf\": \"2026-02-30\"", "'2026-02-30' is no day")]
    [InlineData("\"asOf\": \"2026-05-04\",", "", "lesson.json:1:1: file: 'asOf' is missing here")]
    [InlineData("\"asOf\"", "\"asof\"", "lesson.json:1:3: asof: 'asof' is not a name known here; nearest: asOf")]
    [InlineData("\"hand\": \"right\", ", "", "lesson.json:2:14: student: 'hand' is missing here")]
    [InlineData("\"right\"", "\"both\"", "student.hand: 'both' is not one of the words here; one of: right, left")]
    [InlineData("\"improver\"", "\"improve\"", "'improve' is not one of the words here; nearest: improver")]
    [InlineData("1988", "2027", "student.birthYear: the student is born after the lesson of 2026")]
    [InlineData("1988", "2026", "born in 2026 the student would be younger than 2")]
    [InlineData("1988", "1888", "1888 is more than 110 years before the lesson")]
    [InlineData("1988", "\"1988\"", "a number is expected, not the text '1988'")]
    [InlineData("1988", "1988.5", "a whole number from 0 to 9999 is expected, not 1988.5")]
    [InlineData("\"minutesPerWeek\": 90", "\"minutesPerWeek\": 0", "a whole number from 1 to 5040 is expected, not 0")]
    [InlineData("\"daysPerWeek\": 3", "\"daysPerWeek\": 8", "a whole number from 1 to 7 is expected, not 8")]
    [InlineData("[\"distance\", \"consistency\"]", "[\"distance\", \"distance\"]", "student.goals[1]: this stands in the list already")]
    [InlineData("[\"alignment-stick\", \"mirror\"]", "[\"mirror\", \"mirror\"]", "student.kit[1]: this stands in the list already")]
    [InlineData("[\"alignment-stick\", \"mirror\"]", "[\"miror\"]", "student.kit[0]: 'miror' is not one of the words here; nearest: mirror")]
    [InlineData("[\"alignment-stick\", \"mirror\"]", "\"mirror\"", "student.kit: a list [..] is expected, not the text 'mirror'")]
    [InlineData("\"room\": \"range\"", "\"room\": null", "'room' is missing here")]
    [InlineData("\"lower-back\"", "\"lower-bak\"", "student.limits[0].region: 'lower-bak' is not one of the words here; nearest: lower-back")]
    [InlineData("\"status\": \"past\" }", "\"status\": \"past\" }, { \"region\": \"lower-back\", \"status\": \"current\" }", "student.limits[1].region: this region stands in the list already")]
    [InlineData("\"heightCm\": 180", "\"heightCm\": 1.8", "student.heightCm: 1.8 is no stature from 80 to 230 cm")]
    [InlineData("{ \"value\": 105, \"unit\": \"mph\" }", "{ \"value\": 105, \"unit\": \"m/s\" }", "student.clubSpeedGoal.value: club-speed of 105 m/s is not plausible; the limits are 8 to 70 m/s")]
    [InlineData("{ \"value\": 105, \"unit\": \"mph\" }", "{ \"value\": 105, \"unit\": \"deg\" }", "deg is no unit of club-speed; write one of: m/s, mph, km/h")]
    [InlineData("\"driver\"", "\"drivr\"", "club: 'drivr' is not one of the words here; nearest: driver")]
    [InlineData("\"impact-spine-tilt\"", "\"impact-spine-tlit\"", "readings[0].measure: there is no measure 'impact-spine-tlit'; nearest: impact-spine-tilt")]
    [InlineData("\"head-shift\"", "\"impact-spine-tilt\"", "lesson.json:7:30: readings[1].measure: impact-spine-tilt stands in line 6 already; write one value, the mean of its readings")]
    [InlineData("\"unit\": \"in\"", "\"unit\": \"mph\"", "readings[1].unit: mph is no unit of head-shift; write one of: cm, mm, in, m, yd, ft")]
    [InlineData("\"unit\": \"in\"", "\"unit\": \"inch\"", "readings[1].unit: 'inch' is no unit")]
    [InlineData(", \"unit\": \"in\"", "", "readings[1]: 'unit' is missing here")]
    [InlineData("\"value\": 14,", "\"value\": 102,", "readings[0].value: impact-spine-tilt of 102 deg is not plausible; the limits are -30 to 60 deg: did you read it from the ground? A line read as 102 from the ground is a tilt of 12")]
    [InlineData("\"value\": 14,", "\"value\": -31,", "impact-spine-tilt of -31 deg is not plausible; the limits are -30 to 60 deg")]
    [InlineData("\"measure\": \"impact-spine-tilt\", \"value\": 14, \"unit\": \"deg\"", "\"measure\": \"smash-factor\", \"value\": 1.57, \"unit\": \"ratio\"", "smash-factor of 1.57 ratio is not plausible; the limits are open to 1.56 ratio")]
    [InlineData("\"value\": 14,", "\"value\": 1e999,", "this number is too large to be one")]
    [InlineData("\"value\": 2,", "\"value\": 1e308,", "readings[1].value: head-shift of")]
    [InlineData("\"value\": 14,", "\"value\": NaN,", "lesson.json:6:60: file: this is not JSON")]
    [InlineData("\"readings\": 3", "\"readings\": 0", "readings[0].readings: a whole number from 1 to 1000 is expected, not 0")]
    [InlineData("\"readings\": 3", "\"readings\": 2.5", "a whole number from 1 to 1000 is expected, not 2.5")]
    [InlineData("\"instrument\": \"video\"", "\"instrument\": \"vidoe\"", "'vidoe' is not one of the words here; nearest: video")]
    [InlineData("\"frameRate\": 240", "\"frameRate\": 0", "readings[0].frameRate: 0 frames a second is not possible")]
    [InlineData("\"frameRate\": 240", "\"fps\": 240", "readings[0].fps: 'fps' is not a name known here; one of: frameRate, instrument, measure, readings, unit, value")]
    [InlineData("\"sessions\": 6", "\"sessions\": -1", "tried[0].sessions: a whole number from 1 to 10000 is expected, not -1")]
    [InlineData("\"no-change\"", "\"nochange\"", "tried[0].outcome: 'nochange' is not one of the words here; nearest: no-change")]
    [InlineData("\"club\": \"driver\",", "\"club\": \"driver\", \"club\": \"iron\",", "lesson.json:5:21: club: 'club' is written twice, first in line 5; keep one of them")]
    [InlineData("\"club\": \"driver\",", "\"club\": \"driver\", // the big one", "lesson.json:5:21: file: this is not JSON")]
    [InlineData("\"no-change\" } ] }", "\"no-change\" } ], }", "lesson.json:8:81: file: this is not JSON: The JSON object contains a trailing comma at the end; JSON has none")]
    [InlineData("\"club\": \"driver\"", "\"club\": \"\\ud800\"", "lesson.json:5:11: club: this text holds half a character")]
    public void Each_refusal_names_its_place_and_what_would_be_right(string old, string replacement, string expected)
    {
        var faults = SmallLesson.With(old, replacement).Faults.Select(f => f.ToString()).ToList();

        Assert.Contains(faults, fault => fault.Contains(expected, StringComparison.Ordinal));
        Assert.True(faults.Count <= 2, string.Join("\n", faults));
    }

    [Fact]
    public void Three_faults_are_three_lines_in_order()
    {
        var json = SmallLesson.Json.Replace("\"right\"", "\"both\"", StringComparison.Ordinal)
            .Replace("\"driver\"", "\"spoon\"", StringComparison.Ordinal).Replace("\"frameRate\"", "\"frames\"", StringComparison.Ordinal);

        Assert.Equal([(2, 24), (5, 11), (6, 117)], SmallLesson.Read(json).Faults.Select(f => (f.Line, f.Column)));
    }

    [Theory]
    [InlineData("", "lesson.json:1:1: file: the file is empty; write one JSON object")]
    [InlineData(" \r\n\t ", "lesson.json:1:1: file: the file is empty; write one JSON object")]
    [InlineData("[]", "lesson.json:1:1: file: a mapping (name: value) is expected, not a list")]
    [InlineData("null", "lesson.json:1:1: file: a mapping (name: value) is expected, not nothing")]
    [InlineData("{} {}", "lesson.json:1:4: file: this is not JSON")]
    [InlineData("{\"a\":", "lesson.json:1:6: file: this is not JSON")]
    public void What_is_no_lesson_is_refused_in_a_sentence(string json, string expected) =>
        Assert.StartsWith(expected, SmallLesson.Read(json).Faults[0].ToString(), StringComparison.Ordinal);

    [Fact]
    public void Ten_megabytes_are_refused_by_their_size() =>
        Assert.Contains("at most 1048576 are read", SmallLesson.Read(new string(' ', 10_000_000)).Faults[0].Message, StringComparison.Ordinal);

    [Fact]
    public void Nesting_without_end_is_refused() =>
        Assert.Contains("this is not JSON", SmallLesson.Read(new string('[', 1_000_000)).Faults[0].Message, StringComparison.Ordinal);

    [Fact]
    public void Bytes_that_are_not_UTF8_are_refused_at_their_place()
    {
        byte[] bytes = [.. "{\n \"é"u8, 0xFF, .. "\": 1 }"u8];

        Assert.Equal("lesson.json:2:4: file: byte 7 is not UTF-8; save the file as UTF-8", LessonReader.Read("lesson.json", bytes, SmallBook.Book).Faults[0].ToString());
    }

    [Fact]
    public void A_byte_order_mark_is_passed_over() =>
        Assert.True(LessonReader.Read("lesson.json", (byte[])[0xEF, 0xBB, 0xBF, .. System.Text.Encoding.UTF8.GetBytes(SmallLesson.Json)], SmallBook.Book).Succeeded);

    [Fact]
    public void A_file_that_is_not_there_is_a_fault() =>
        Assert.Equal("no-such.json:1:1: file: there is no such file", LessonReader.FromFile("no-such.json", SmallBook.Book).Faults[0].ToString());
}
