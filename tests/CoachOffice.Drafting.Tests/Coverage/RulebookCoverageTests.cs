using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Coverage;

namespace CoachOffice.Drafting.Tests.Coverage;

/// <summary>Every fault a plan may work on, for every kind of student, by the shipped rulebook.</summary>
public sealed class RulebookCoverageTests
{
    private static readonly Lazy<IReadOnlyList<CoveredWork>> Once = new(() => [.. RulebookCoverage.Of(HouseBook.Book)]);

    private static IReadOnlyList<CoveredWork> All => Once.Value;

    [Fact]
    public void Nobody_meets_a_gap_without_a_reason_and_something_to_do_instead() =>
        Assert.Empty(All.Where(w => w.IsHole).Select(w => $"{w.Fault}: {w.Student}").Take(20));

    [Fact]
    public void Every_fault_has_a_first_step_for_everybody() =>
        Assert.Empty(All.Where(w => !w.Offered.Contains(Stage.Rehearse)).Select(w => $"{w.Fault}: {w.Student}").Take(20));

    [Fact]
    public void Outside_the_home_every_step_is_there_unless_a_limit_of_today_stands() =>
        Assert.Empty(All.Where(w => w.Student.Room != Room.Home && w.Student.Limit?.Status != LimitStatus.Current && w.Missing.Count > 0).Select(w => $"{w.Fault}: {w.Student}").Take(20));

    [Fact]
    public void A_limit_of_today_leaves_rehearsal_and_nothing_else() =>
        Assert.All(All.Where(w => w.Student.Limit?.Status == LimitStatus.Current), w => Assert.Equal([Stage.Rehearse], w.Offered));

    [Fact]
    public void All_roots_all_rooms_all_regions_are_among_them()
    {
        Assert.Empty(HouseBook.Book.Patterns.SelectMany(p => p.Root).Except(All.Select(w => w.Fault)));
        Assert.Equal(Enum.GetValues<Room>(), All.Select(w => w.Student.Room).Distinct().Order());
        Assert.Equal(Enum.GetValues<Region>(), All.Select(w => w.Student.Limit?.Region).OfType<Region>().Distinct().Order());
        Assert.Equal(Enum.GetValues<Level>(), All.Select(w => w.Student.Level).Distinct().Order());
    }

    [Fact]
    public void A_stage_nobody_wrote_drills_for_is_a_hole()
    {
        var fault = HouseBook.Book.Progressions.First(p => p.Id.Value == "quiet-head-down").Faults[0];
        var cut = Without("quiet-head-down", Stage.Full);
        var work = RulebookCoverage.Of(cut).First(w => w.Fault == fault && w.Student is { Room: Room.Range, Limit: null });
        Assert.True(work.IsHole);
        Assert.Null(work.Missing[Stage.Full]);
        Assert.Contains("holes without a reason", CoverageText.Write([work]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_room_without_half_swings_names_the_room_and_says_what_to_do_instead()
    {
        var work = All.First(w => w.Fault.ToString() == "downswing-head-shift.high" && w.Student is { Room: Room.Home, Limit: null });
        Assert.Equal(WithheldReason.Room, work.Missing[Stage.Half]);
        Assert.Equal(["steps-wait-for-room"], work.Instead);
        Assert.Contains("no half full mix play (room) -> steps-wait-for-room", CoverageText.Write([work]), StringComparison.Ordinal);
    }

    private static Rulebook Without(string progression, Stage stage)
    {
        var book = HouseBook.Book;
        return new Rulebook
        {
            Name = book.Name,
            Measures = book.Measures,
            Ranges = book.Ranges,
            Adjustments = book.Adjustments,
            Patterns = book.Patterns,
            TrainAfter = book.TrainAfter,
            Goals = book.Goals,
            Drills = book.Drills,
            Progressions = [.. book.Progressions.Select(p => p.Id.Value == progression ? p with { Rungs = [.. p.Rungs.Where(r => r.Stage != stage)] } : p)],
            Cautions = book.Cautions,
            Dosage = book.Dosage,
        };
    }
}
