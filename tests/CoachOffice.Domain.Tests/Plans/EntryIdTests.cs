using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Tests.Plans;

public sealed class EntryIdTests
{
    private static readonly MeasureId Lean = MeasureId.From("impact-shaft-lean");
    private static readonly MeasureId Grip = MeasureId.From("lead-hand-grip");

    [Fact]
    public void Every_entry_of_a_book_has_a_name_of_its_own()
    {
        EntryId[] entries =
        [
            EntryId.Of(Lean), EntryId.RangesOf(Lean),
            EntryId.Of(new RangeAdjustment { Measure = Lean, FromAge = 60, Source = SourceMark.CommonPractice }),
            EntryId.Of(PatternId.From("body-outruns")), EntryId.Of(new TrainAfter(Lean, [Grip, MeasureId.From("top-face")], "")),
            EntryId.Of(new GoalMeasures(Goal.Distance, [], [])), EntryId.Dosage, EntryId.Of(DrillId.From("shadow-head")),
            EntryId.Of(ProgressionId.From("quiet-head")), EntryId.Of(CautionId.From("space-around")), EntryId.Case("body-outruns", "dives"), EntryId.Name,
        ];
        Assert.Equal(
            [
                "measure impact-shaft-lean", "range impact-shaft-lean", "adjustment impact-shaft-lean from 60", "pattern body-outruns",
                "train-after impact-shaft-lean after lead-hand-grip", "goal distance", "dosage", "drill shadow-head",
                "progression quiet-head", "caution space-around", "case body-outruns: dives", "name",
            ],
            entries.Select(e => e.ToString()));
        Assert.Equal(Enum.GetValues<EntryKind>(), entries.Select(e => e.Kind));
    }

    [Fact]
    public void Entries_have_one_order_by_kind_and_then_by_key()
    {
        EntryId[] sorted = [EntryId.Of(Grip), EntryId.RangesOf(Lean), EntryId.RangesOf(Grip), EntryId.Dosage];
        for (var i = 0; i < sorted.Length; i++)
        {
            for (var j = 0; j < sorted.Length; j++)
            {
                var (a, b) = (sorted[i], sorted[j] with { });
                Assert.Equal(i < j, a < b);
                Assert.Equal(i > j, a > b);
                Assert.Equal(i <= j, a <= b);
                Assert.Equal(i >= j, a >= b);
            }
        }

        Assert.Equal(1, sorted[0].CompareTo(null));
    }
}
