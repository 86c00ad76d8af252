using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Measuring;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Measuring;

/// <summary>In vain: six sessions over fourteen days with 60 % of the repetitions and no change with enough readings (own judgement); less is not judged.</summary>
public sealed class WorkOnStageTests
{
    private static readonly LocalDate Began = new(2026, 3, 2);

    [Theory]
    [InlineData(6, 14, 60, true)]
    [InlineData(5, 14, 60, false)]
    [InlineData(6, 13, 60, false)]
    [InlineData(6, 14, 59, false)]
    [InlineData(6, 14, null, false)]
    public void Enough_is_sessions_and_days_and_repetitions(int sessions, int days, int? percent, bool enough)
    {
        var work = WorkOnStage.Of(Notes(sessions, percent), Began, Began.PlusDays(days));

        Assert.Equal(enough, work.IsEnough);
        Assert.Equal(enough ? TriedOutcome.NoChange : null, work.Outcome(Verdict(Movement.NoChangeBeyondReadingError)));
    }

    [Fact]
    public void Two_notes_of_one_day_are_one_session()
    {
        var notes = Notes(6, 90).Concat(Notes(6, 90)).ToList();

        Assert.Equal(6, WorkOnStage.Of(notes, Began, Began.PlusDays(14)).Sessions);
    }

    [Fact]
    public void Practice_outside_the_stage_does_not_count() => Assert.Equal(3, WorkOnStage.Of(Notes(6, 90), Began.PlusDays(3), Began.PlusDays(14)).Sessions);

    [Fact]
    public void What_could_not_be_told_is_not_judged() => Assert.Null(WorkOnStage.Of(Notes(9, 100), Began, Began.PlusDays(20)).Outcome(Verdict(Movement.CannotTell)));

    [Fact]
    public void A_move_toward_counts_from_the_first_session_and_a_move_away_only_after_enough_work()
    {
        Assert.Equal(TriedOutcome.Improved, WorkOnStage.Of(Notes(1, null), Began, Began.PlusDays(7)).Outcome(Verdict(Movement.MovedToward)));
        Assert.Null(WorkOnStage.Of(Notes(0, null), Began, Began.PlusDays(7)).Outcome(Verdict(Movement.MovedToward)));
        Assert.Null(WorkOnStage.Of(Notes(3, 100), Began, Began.PlusDays(14)).Outcome(Verdict(Movement.MovedAway)));
        Assert.Equal(TriedOutcome.Worse, WorkOnStage.Of(Notes(6, 100), Began, Began.PlusDays(14)).Outcome(Verdict(Movement.MovedAway)));
    }

    private static List<CheckIn> Notes(int sessions, int? percent) =>
        [.. Enumerable.Range(0, sessions).Select(n => new CheckIn
        {
            Id = Guid.Empty,
            PlanId = PlanId.From(new SeededIds(1).Next()),
            StudentId = StudentId.From(new SeededIds(2).Next()),
            At = Instant.FromUtc(2026, 3, 2, 18, 0),
            PracticedOn = Began.PlusDays(n),
            Minutes = 20,
            RepetitionsPercent = percent,
        })];

    private static KeptVerdict Verdict(Movement movement) => new()
    {
        Movement = movement,
        Standing = Standing.NotYet,
        Before = 12,
        BeforeReadings = 3,
        After = 12,
        AfterReadings = 5,
        SmallestRealChange = 3,
        Sentence = "",
    };
}
