using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Replay;

namespace CoachOffice.Benchmarks.Replay;

/// <summary>Edits of the shipped rulebook that reach few lessons or all.</summary>
internal sealed class SomeEdits(CompiledRulebook inForce)
{
    private readonly Rulebook _book = inForce.Book;

    /// <summary>One range with its high edge a step up: the range, of all, that is nearest to reaching this share of the lessons.</summary>
    public (WantedRange Range, CompiledRulebook Edited) OneRange(IReadOnlyList<LessonFacts> lessons, double share)
    {
        var range = _book.Ranges.Where(r => r.Limits.High is not null && _book.Find(r.Measure) is { Step: not null, Derived: null })
            .MinBy(r => Math.Abs(((double)lessons.Count(l => Reaches(r, l)) / lessons.Count) - share))!;
        var moved = range with { Limits = range.Limits with { High = range.Limits.High + _book.Find(range.Measure)!.Step } };
        return (range, With(ranges: [.. _book.Ranges.Select(r => ReferenceEquals(r, range) ? moved : r)]));
    }

    /// <summary>Another shortest session: any plan may get other amounts, so every lesson is drafted by both books.</summary>
    public CompiledRulebook Amounts() => With(dosage: _book.Dosage with { ShortestSessionMinutes = _book.Dosage.ShortestSessionMinutes + 1 });

    /// <summary>The caution for children reworded: every lesson is looked at, and few are drafted.</summary>
    public CompiledRulebook ChildrensCaution() =>
        With(cautions: [.. _book.Cautions.Select(c => c.Occasion == CautionOccasion.UnderThirteen ? c with { Text = c.Text + " Ask at home first." } : c)]);

    private bool Reaches(WantedRange range, LessonFacts lesson) =>
        lesson.Club == range.Club && SureRange.Of(_book, range.Measure, range.Club) is { Inside: { } inside }
        && lesson.Readings.Any(r => r.Measure == range.Measure && !inside.Contains(r.Value.Value));

    private CompiledRulebook With(IReadOnlyList<WantedRange>? ranges = null, Dosage? dosage = null, IReadOnlyList<Caution>? cautions = null)
    {
        var book = new Rulebook
        {
            Name = _book.Name,
            Measures = _book.Measures,
            Ranges = ranges ?? _book.Ranges,
            Adjustments = _book.Adjustments,
            Patterns = _book.Patterns,
            TrainAfter = _book.TrainAfter,
            Goals = _book.Goals,
            Drills = _book.Drills,
            Progressions = _book.Progressions,
            Cautions = cautions ?? _book.Cautions,
            Dosage = dosage ?? _book.Dosage,
        };
        return CompiledRulebook.Compile(inForce.Loaded with { Book = book, Sha256 = "edited", Cases = [] });
    }
}
