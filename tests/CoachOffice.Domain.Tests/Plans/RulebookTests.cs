using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Domain.Tests.Plans;

public sealed class RulebookTests
{
    private static readonly Rulebook Book = Measuring.Lessons.Book;

    [Fact]
    public void What_is_in_the_book_is_found_by_its_id_and_nothing_else()
    {
        Assert.Same(Measuring.Lessons.Head, Book.Find(Measuring.Lessons.Head.Id));
        Assert.Null(Book.Find(MeasureId.From("hat-size")));
        Assert.Null(Book.Find(DrillId.From("hat-on")));
        Assert.Null(Book.Find(PatternId.From("hat-falls")));
    }

    [Fact]
    public void A_range_is_of_one_measure_and_one_club()
    {
        Assert.Equal(new Limits(20, 28), Book.RangeOf(Measuring.Lessons.Tilt.Id, Club.Driver)!.Limits);
        Assert.Null(Book.RangeOf(Measuring.Lessons.Tilt.Id, Club.Wedge));
        Assert.Null(Book.RangeOf(Measuring.Lessons.Tempo.Id, Club.Driver));
    }

    [Fact]
    public void The_first_progression_that_names_a_fault_serves_it()
    {
        var (head, tilt) = (FaultId.Parse("downswing-head-shift.high"), FaultId.Parse("impact-spine-tilt.low"));
        var (first, second) = (Ladder("quiet-head", [head]), Ladder("tilt-kept", [tilt, head]));
        var book = new Rulebook
        {
            Name = "Ladders",
            Measures = [],
            Ranges = [],
            Adjustments = [],
            Patterns = [],
            TrainAfter = [],
            Goals = [],
            Drills = [],
            Progressions = [first, second],
            Cautions = [],
            Dosage = Book.Dosage,
        };
        Assert.Same(first, book.For(head));
        Assert.Same(second, book.For(tilt));
        Assert.Null(book.For(FaultId.Parse("impact-spine-tilt.high")));
    }

    private static Progression Ladder(string id, IReadOnlyList<FaultId> faults) => new() { Id = ProgressionId.From(id), Name = id, Faults = faults, Rungs = [] };
}
