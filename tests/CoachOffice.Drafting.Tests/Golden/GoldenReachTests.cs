using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Tests.Properties;

namespace CoachOffice.Drafting.Tests.Golden;

/// <summary>The kept lessons go through the whole of the shipped rulebook's causes, clubs and students.</summary>
public sealed class GoldenReachTests
{
    private const int Fewest = 40;

    private static readonly Lazy<IReadOnlyList<LessonFacts>> Lessons = new(() => [.. GoldenTable.Why.Keys.Select(GoldenTests.Lesson)]);

    [Fact]
    public void Every_pattern_of_the_shipped_rulebook_fires_in_one_of_them() =>
        Assert.Empty(HouseBook.Book.Patterns.Select(p => p.Id.Value).Except(Lessons.Value.SelectMany(l => Drafted.Of(l).Fired())));

    [Fact]
    public void Clubs_levels_rooms_hands_goals_and_ages_vary()
    {
        Assert.InRange(Lessons.Value.Count, Fewest, int.MaxValue);
        Assert.Equal(Enum.GetValues<Club>(), Lessons.Value.Select(l => l.Club).Distinct().Order());
        Assert.Equal(Enum.GetValues<Level>(), Lessons.Value.Select(l => l.Student.Level).Distinct().Order());
        Assert.Equal(Enum.GetValues<Room>(), Lessons.Value.Select(l => l.Student.Room).Distinct().Order());
        Assert.Equal(Enum.GetValues<Hand>(), Lessons.Value.Select(l => l.Student.Hand).Distinct().Order());
        Assert.Equal(Enum.GetValues<Goal>(), Lessons.Value.SelectMany(l => l.Student.Goals).Distinct().Order());
        Assert.Equal(Enum.GetValues<LimitStatus>(), Lessons.Value.SelectMany(l => l.Student.Limits).Select(l => l.Status).Distinct().Order());
        Assert.Contains(Lessons.Value, l => l.Age < 13);
        Assert.Contains(Lessons.Value, l => l.Age is >= 13 and < 18);
        Assert.Contains(Lessons.Value, l => l.Age >= 60);
        Assert.Contains(Lessons.Value, l => l.Tried.Count > 0);
    }
}
