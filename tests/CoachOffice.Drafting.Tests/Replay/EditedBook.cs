using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests.Replay;

/// <summary>Copies of a rulebook with some definitions replaced, compiled as if read from files.</summary>
internal static class EditedBook
{
    public static Rulebook With(this Rulebook book, IEnumerable<Measure>? measures = null, IEnumerable<WantedRange>? ranges = null, IEnumerable<RangeAdjustment>? adjustments = null, IEnumerable<Pattern>? patterns = null, IEnumerable<TrainAfter>? trainAfter = null, IEnumerable<GoalMeasures>? goals = null, IEnumerable<Drill>? drills = null, IEnumerable<Progression>? progressions = null, IEnumerable<Caution>? cautions = null, Dosage? dosage = null) => new()
    {
        Name = book.Name,
        Measures = [.. (measures ?? book.Measures).Select((m, row) => m with { Row = row })],
        Ranges = [.. ranges ?? book.Ranges],
        Adjustments = [.. adjustments ?? book.Adjustments],
        Patterns = [.. patterns ?? book.Patterns],
        TrainAfter = [.. trainAfter ?? book.TrainAfter],
        Goals = [.. goals ?? book.Goals],
        Drills = [.. drills ?? book.Drills],
        Progressions = [.. progressions ?? book.Progressions],
        Cautions = [.. cautions ?? book.Cautions],
        Dosage = dosage ?? book.Dosage,
    };

    public static CompiledRulebook Compiled(this Rulebook book) => CompiledRulebook.Compile(HouseBook.Compiled.Loaded with { Book = book, Sha256 = "edited", Cases = Array.Empty<PatternCase>() });
}
