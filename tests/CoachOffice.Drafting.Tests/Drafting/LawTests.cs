using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Ordering;

namespace CoachOffice.Drafting.Tests.Drafting;

/// <summary>Single laws of the order of work, on lessons of the shipped rulebook.</summary>
public sealed class LawTests
{
    [Fact]
    public void A_law_gives_the_reason_for_its_own_pair_only()
    {
        var laws = new TrainAfterLaws([Law("low-point", "club-path", "one"), Law("low-point", "top-face", "two"), Law("lag-angle", "top-face", "three")]);
        Assert.Equal(("one", "two", "three", null), (laws.Because(Id("low-point"), Id("club-path")), laws.Because(Id("low-point"), Id("top-face")), laws.Because(Id("lag-angle"), Id("top-face")), laws.Because(Id("lag-angle"), Id("club-path"))));
    }

    [Fact]
    public void Whether_to_leave_a_swing_alone_wants_path_face_and_one_strike()
    {
        Assert.Equal(["club-path", "face-to-path", "contact-offset-toe"], Unread());
        Assert.Equal(["club-path", "face-to-path"], Unread(HouseBook.Value("low-point", 6)));
        Assert.Equal(["face-to-path"], Unread(HouseBook.Value("low-point", 6), HouseBook.Value("club-path", 0)));
    }

    [Theory]
    [InlineData(3.8, 12, "downswing-head-shift.high")]
    [InlineData(9, 7.2, "backswing-head-shift.high")]
    public void A_sum_follows_from_the_part_that_is_further_out(double back, double down, string part) =>
        Assert.Equal(FaultId.Parse(part), Parked("head-drift.high", HouseBook.Value("backswing-head-shift", back, 20), HouseBook.Value("downswing-head-shift", down, 20)).By);

    [Theory]
    [InlineData(0.80, 0.45, "tempo-ratio.low", "downswing-time.high")]
    [InlineData(0.80, 0.14, "tempo-ratio.high", "downswing-time.low")]
    [InlineData(0.50, 0.28, "tempo-ratio.low", "backswing-time.low")]
    public void A_ratio_follows_from_its_lower_part_the_other_way_round(double back, double down, string ratio, string part) =>
        Assert.Equal(FaultId.Parse(part), Parked(ratio, HouseBook.Value("backswing-time", back, 20), HouseBook.Value("downswing-time", down, 20)).By);

    [Theory]
    [InlineData(2007, false, false)]
    [InlineData(2008, true, false)]
    [InlineData(2012, true, false)]
    [InlineData(2013, true, true)]
    public void The_young_are_told_so_up_to_the_very_year(int birthYear, bool minor, bool child)
    {
        var facts = HouseBook.Lesson(Club.Driver, HouseBook.Value("downswing-head-shift", 12));
        var said = Drafter.Draft(HouseBook.Compiled, facts with { Student = facts.Student with { BirthYear = birthYear, HeightCm = 170 } }).Cautions.Select(c => c.Id).ToList();
        Assert.Equal((minor, child), (said.Contains("minor-guardian"), said.Contains("under-13-easy")));
    }

    private static DraftParked Parked(string fault, params IReadOnlyList<MeasuredValue> readings) =>
        Drafter.Draft(HouseBook.Compiled, HouseBook.Lesson(Club.Driver, readings)).Parked.Single(p => p.Fault == FaultId.Parse(fault));

    private static IEnumerable<string> Unread(params IReadOnlyList<MeasuredValue> readings) =>
        LeaveItLaw.Unread(LessonAtHand.Of(HouseBook.Book, HouseBook.Lesson(Club.Iron, readings))).Select(m => m.Value);

    private static TrainAfter Law(string work, string after, string because) => HouseBook.Book.TrainAfter[0] with { Work = Id(work), After = [Id(after)], Because = because };

    private static MeasureId Id(string id) => MeasureId.From(id);
}
