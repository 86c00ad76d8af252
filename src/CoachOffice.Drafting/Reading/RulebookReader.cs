using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Canonical;
using CoachOffice.Drafting.Reading.Entries;

namespace CoachOffice.Drafting.Reading;

/// <summary>Reads a rulebook's files into the model. All faults are found in one go.</summary>
public static class RulebookReader
{
    /// <summary>The rulebook without its worked cases.</summary>
    public static ReadResult<Rulebook> Read(RulebookText text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var faults = new FaultList();
        var book = Book(new Shelf(new RuleFiles(text, faults), faults));
        return faults.Result(() => book!);
    }

    /// <summary>The rulebook with its worked cases, its text and its hash.</summary>
    /// <param name="text">The files.</param>
    /// <param name="read">Files read before, which need not be parsed again.</param>
    public static ReadResult<LoadedRulebook> Load(RulebookText text, FilesRead? read = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        var faults = new FaultList();
        var shelf = new Shelf(new RuleFiles(text, faults, read), faults);
        var book = Book(shelf);
        var cases = new CaseEntries(shelf).Read();
        return faults.Result(() => new LoadedRulebook(book!, text, CanonicalRulebook.Sha256(book!), cases) { Own = shelf.Files.Own, Orders = shelf.Orders });
    }

    private static Rulebook? Book(Shelf shelf)
    {
        var measures = new MeasureEntries(shelf).Read();
        var patterns = new PatternEntries(shelf);
        var progressions = new ProgressionEntries(shelf);
        var name = shelf.Files.TheOnly("name") is { } node ? Single.Text(node, shelf.Faults) : "?";
        var book = new Rulebook
        {
            Name = name,
            Measures = measures,
            Ranges = new RangeEntries(shelf).Read(),
            Adjustments = new AdjustmentEntries(shelf).Read(),
            Cautions = new CautionEntries(shelf).Read(),
            Patterns = patterns.Read(),
            Drills = new DrillEntries(shelf).Read(),
            Progressions = progressions.Read(),
            TrainAfter = new TrainAfterEntries(shelf).Read(),
            Goals = new GoalEntries(shelf).Read(),
            Dosage = new DosageEntry(shelf).Read()!,
        };
        if (shelf.Faults.Count > 0) return book;
        new DutyCheck(book, shelf.Faults).Check(patterns.Roots, progressions.Places);
        new OrderCheck(book, shelf.Faults).Check(patterns.Roots);
        return book;
    }
}
