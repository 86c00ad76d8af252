using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Tests.Lessons;

public sealed class LessonTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 5, 4, 10, 0);
    private static readonly Instant Later = Now + Duration.FromMinutes(5);
    private static readonly LessonId Id = LessonId.From(FixedIds.Of(100));
    private static readonly StudentId Student = StudentId.From(FixedIds.Of(101));
    private static readonly AccountId Coach = AccountId.From(FixedIds.Of(102));

    [Fact]
    public void A_lesson_says_whose_it_is_when_and_with_what()
    {
        var lesson = Start();
        Assert.Equal((Id, Student, Coach, Now), (lesson.Id, lesson.StudentId, lesson.CoachId, lesson.CreatedAt));
        Assert.Equal((new LocalDate(2026, 5, 4), Club.Iron, LessonKind.Retest), (lesson.HeldOn, lesson.Club, lesson.Kind));
        Assert.Empty(lesson.AllReadings);
    }

    [Fact]
    public void Its_heading_and_its_words_can_be_changed()
    {
        var lesson = Start();
        lesson.Head(new LessonHeading(new LocalDate(2026, 5, 3), Club.Driver));
        lesson.Write(" Ball starts right. ", " Bring the tripod. ");
        Assert.Equal((new LocalDate(2026, 5, 3), Club.Driver, LessonKind.Lesson), (lesson.HeldOn, lesson.Club, lesson.Kind));
        Assert.Equal(("Ball starts right.", "Bring the tripod."), (lesson.Observations, lesson.Notes));
    }

    [Fact]
    public void A_reading_is_kept_as_taken()
    {
        var lesson = Start();
        lesson.Record([Taken(14) with { Instrument = Instrument.Sensor, FrameRate = 120 }], new FixedIds(), Now);
        var reading = Assert.Single(lesson.Readings);
        Assert.Equal((FixedIds.Of(1), Id, MeasureId.From("impact-spine-tilt"), 14.0, 1), (reading.Id, reading.LessonId, reading.Measure, reading.Value, reading.Swing));
        Assert.Equal((Instrument.Sensor, 120.0, Now, null), (reading.Instrument, reading.FrameRate, reading.EnteredAt, reading.WithdrawnAt));
    }

    [Fact]
    public void Entering_the_same_again_changes_nothing()
    {
        var lesson = Start();
        var ids = new FixedIds();
        lesson.Record([Taken(14), Taken(15) with { Swing = 2 }], ids, Now);
        lesson.Record([Taken(15) with { Swing = 2 }, Taken(14)], ids, Later);
        Assert.Equal([14, 15], lesson.AllReadings.Select(r => r.Value));
        Assert.All(lesson.AllReadings, r => Assert.Equal((Now, null), (r.EnteredAt, r.WithdrawnAt)));
    }

    public static TheoryData<string> Differences => ["measure", "value", "swing", "instrument", "frame rate"];

    [Theory]
    [MemberData(nameof(Differences))]
    public void A_reading_that_differs_in_anything_withdraws_the_old_one_and_stands_beside_it(string what)
    {
        var fresh = what switch
        {
            "measure" => Taken(14) with { Measure = MeasureId.From("head-drift") },
            "value" => Taken(14.5),
            "swing" => Taken(14) with { Swing = 2 },
            "instrument" => Taken(14) with { Instrument = Instrument.Eye },
            _ => Taken(14) with { FrameRate = 240 },
        };
        var lesson = Start();
        var ids = new FixedIds();
        lesson.Record([Taken(14)], ids, Now);
        lesson.Record([fresh], ids, Later);
        Assert.Equal([Later, null], lesson.AllReadings.Select(r => r.WithdrawnAt));
        Assert.True(Assert.Single(lesson.Readings).Says(fresh));
    }

    [Fact]
    public void A_withdrawn_reading_stays_withdrawn_since_its_first_time_and_comes_back_as_a_new_row()
    {
        var lesson = Start();
        var ids = new FixedIds();
        lesson.Record([Taken(14)], ids, Now);
        lesson.Record([], ids, Now);
        lesson.AllReadings[0].Withdraw(Later);
        lesson.Record([Taken(14)], ids, Later);
        Assert.Equal([Now, null], lesson.AllReadings.Select(r => r.WithdrawnAt));
        Assert.Equal(Later, Assert.Single(lesson.Readings).EnteredAt);
    }

    private static Lesson Start() => Lesson.Start(Id, Student, Coach, new LessonHeading(new LocalDate(2026, 5, 4), Club.Iron, LessonKind.Retest), Now);

    private static TakenReading Taken(double value) => new() { Measure = MeasureId.From("impact-spine-tilt"), Value = new Quantity(value, Unit.Degree), Swing = 1, Instrument = Instrument.Video };
}
