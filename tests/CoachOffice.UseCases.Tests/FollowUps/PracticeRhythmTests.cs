using CoachOffice.UseCases.FollowUps;
using NodaTime;

namespace CoachOffice.UseCases.Tests.FollowUps;

public sealed class PracticeRhythmTests
{
    private static readonly LocalDate Monday = new(2026, 3, 2);

    [Theory]
    [InlineData(7, 3)]
    [InlineData(3, 4)]
    [InlineData(2, 6)]
    [InlineData(1, 11)]
    [InlineData(0, 11)]
    public void Without_notes_the_days_agreed_make_the_rhythm(int daysAWeek, int quiet) => Assert.Equal(quiet, PracticeRhythm.Of([], daysAWeek).QuietDays);

    [Fact]
    public void With_notes_the_students_own_gaps_make_it() => Assert.Equal(8, PracticeRhythm.Of([Monday, Monday.PlusDays(5), Monday.PlusDays(10), Monday.PlusDays(15)], 7).QuietDays);

    [Fact]
    public void One_long_holiday_does_not() => Assert.Equal(3, PracticeRhythm.Of([Monday, Monday.PlusDays(2), Monday.PlusDays(4), Monday.PlusDays(40), Monday.PlusDays(42)], 1).QuietDays);

    [Fact]
    public void Two_notes_on_one_day_are_one_day() => Assert.Equal(4, PracticeRhythm.Of([Monday, Monday, Monday.PlusDays(1), Monday.PlusDays(1)], 3).QuietDays);

    [Fact]
    public void However_rarely_somebody_practises_two_weeks_without_a_word_are_enough() => Assert.Equal(14, PracticeRhythm.Of([Monday, Monday.PlusDays(20), Monday.PlusDays(40), Monday.PlusDays(60)], 1).QuietDays);
}
