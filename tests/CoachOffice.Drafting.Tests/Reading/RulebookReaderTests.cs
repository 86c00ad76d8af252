using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests.Reading;

public sealed class RulebookReaderTests
{
    [Fact]
    public void A_sound_book_is_read_whole()
    {
        var loaded = RulebookReader.Load(RulebookText.Of(SmallBook.Files)).Value;

        var book = loaded.Book;
        Assert.Equal("Small book", book.Name);
        Assert.Equal(["address-spine-tilt", "impact-spine-tilt", "head-shift", "club-speed", "ball-speed", "smash-factor"], book.Measures.Select(m => m.Id.Value));
        Assert.Equal([0, 1, 2, 3, 4, 5], book.Measures.Select(m => m.Row));
        Assert.Equal(["head-dives", "setup-tilt"], book.Patterns.Select(p => p.Id.Value));
        Assert.Equal(3, book.Drills.Count);
        Assert.Equal(5, book.Ranges.Count);
        Assert.Single(book.Progressions);
        Assert.Single(loaded.Cases);
        Assert.Equal(64, loaded.Sha256.Length);
    }

    [Fact]
    public void Ranges_keep_their_aim_source_goal_and_open_ends()
    {
        var book = SmallBook.Book;

        var tilt = book.RangeOf(MeasureId.From("impact-spine-tilt"), Club.Driver)!;
        Assert.Equal(new Limits(20, 28), tilt.Limits);
        Assert.Equal(new Limits(20, 25), tilt.Aim);
        Assert.Equal(SourceMark.CommonPractice, tilt.Source);
        Assert.Equal(new SourceMark(true, "Someone 2001"), book.RangeOf(MeasureId.From("address-spine-tilt"), Club.Driver)!.Source);
        Assert.True(book.RangeOf(MeasureId.From("club-speed"), Club.Driver)!.FromGoal);
        Assert.Equal(new Limits(null, 3), book.RangeOf(MeasureId.From("head-shift"), Club.Driver)!.Limits);
        Assert.Null(book.RangeOf(MeasureId.From("head-shift"), Club.Wedge));
    }

    [Fact]
    public void Conditions_are_read_in_every_form()
    {
        var (setup, dives) = (SmallBook.Book.Find(PatternId.From("setup-tilt"))!, SmallBook.Book.Find(PatternId.From("head-dives"))!);
        var tilt = MeasureId.From("impact-spine-tilt");
        var head = MeasureId.From("head-shift");

        Assert.Equal(new OutCondition(MeasureId.From("address-spine-tilt"), Side.Low), setup.When[0]);
        Assert.Equal([new OutCondition(tilt, Side.Low, Grade.Moderate), new ValueCondition(tilt, Side.Low, 5)], Assert.IsType<AnyOfCondition>(setup.When[1]).Any);
        Assert.Equal([new StateCondition(head, MeasureState.InRange), new FiredCondition(dives.Id)], setup.Unless);
        Assert.Equal([new OutCondition(head, Side.High), new ReadingsCondition(head, 2), new OthersInRangeCondition(1)], dives.When.Take(3));
        Assert.Equal([head, tilt], Assert.IsType<SameSideCondition>(dives.When[3]).Measures);
        Assert.Equal([FaultId.Parse("impact-spine-tilt.low"), FaultId.Parse("impact-spine-tilt.high")], dives.ExplainsIfPresent);
    }

    [Fact]
    public void A_normal_swing_is_written_out_and_the_heavier_load_wins()
    {
        var loads = SmallBook.Book.Find(DrillId.From("half-lean"))!.Loads;

        Assert.Equal(10, loads.Count);
        Assert.Equal([Region.LowerBack], loads.Where(l => l.MoreThanSwing).Select(l => l.Region));
    }

    [Fact]
    public void Three_faults_in_two_files_are_three_lines_in_order()
    {
        var text = RulebookText.Of(SmallBook.Files.Select(f => KeyValuePair.Create(f.Key, f.Value
            .Replace("root: address-spine-tilt.low", "root: adress-spine-tilt.low", StringComparison.Ordinal)
            .Replace("precedence: 17", "precedence: soon", StringComparison.Ordinal)
            .Replace("iron: [9, 19]", "iron: [19, 9]", StringComparison.Ordinal))));

        var faults = RulebookReader.Read(text).Faults;

        Assert.Equal(
            [
                "patterns.yaml:4:17: patterns[0].precedence: a number is expected, not the text 'soon'",
                "patterns.yaml:11:11: patterns[0].root: there is no measure 'adress-spine-tilt'; nearest: address-spine-tilt",
                "ranges.yaml:4:11: ranges[0].iron: the low end 19 is above the high end 9; swap them",
            ],
            faults.Select(f => f.ToString()));
    }

    [Fact]
    public void A_broken_file_hides_no_faults_elsewhere_and_raises_none_about_what_it_may_hold()
    {
        var broken = SmallBook.WithFile("measures.yaml", "measures:\n  - id: [\n").Files
            .Select(f => KeyValuePair.Create(f.Key, f.Value.Replace("precedence: 17", "precedence: soon", StringComparison.Ordinal)));

        var faults = RulebookReader.Read(RulebookText.Of(broken)).Faults;

        Assert.Equal(["measures.yaml", "patterns.yaml"], faults.Select(f => f.File));
    }
}
