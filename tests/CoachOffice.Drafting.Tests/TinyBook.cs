using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests;

/// <summary>A rulebook of a few invented measures, all wanted between 0 and 10 with a step of 4 and hardly any error, for tests of the ordering itself.</summary>
internal sealed class TinyBook
{
    private readonly List<Measure> _measures = [];
    private readonly List<Pattern> _patterns = [];
    private readonly List<TrainAfter> _laws = [];

    public TinyBook Measure(string id, Moment moment, bool style = false, bool outcome = false)
    {
        _measures.Add(new Measure
        {
            Id = MeasureId.From(id),
            Name = id,
            Unit = Unit.Degree,
            View = View.FaceOn,
            Moment = moment,
            Positive = "more",
            HowTo = "Read it.",
            Plausible = new Limits(-100, 100),
            SetupError = 0.01,
            SwingError = 0,
            Step = 4,
            Instruments = [Instrument.Video],
            StyleOnly = style,
            Outcome = outcome,
            Row = _measures.Count,
        });
        return this;
    }

    public TinyBook Pattern(string id, int precedence, string root, string[] explains, string[]? over = null, string[]? forbids = null, string[]? unless = null)
    {
        _patterns.Add(new Pattern
        {
            Id = PatternId.From(id),
            Name = id,
            Precedence = precedence,
            Root = [FaultId.Parse(root)],
            Explains = [.. explains.Select(FaultId.Parse)],
            When = [.. new[] { root }.Concat(explains).Select(FaultId.Parse).Select(f => new OutCondition(f.Measure, f.Side))],
            Unless = [.. (unless ?? []).Select(u => new FiredCondition(PatternId.From(u)))],
            Over = [.. (over ?? []).Select(PatternId.From)],
            Forbids = [.. (forbids ?? []).Select(FaultId.Parse)],
            Because = $"Because of {id}.",
            Rationale = "Invented.",
            Source = SourceMark.CommonPractice,
        });
        return this;
    }

    /// <summary>A pattern as it is.</summary>
    public TinyBook Pattern(Pattern pattern)
    {
        _patterns.Add(pattern);
        return this;
    }

    public TinyBook After(string work, params string[] after)
    {
        _laws.Add(new TrainAfter(MeasureId.From(work), [.. after.Select(MeasureId.From)], "Invented."));
        return this;
    }

    /// <summary>Every fault gets a ladder with one plain drill for each stage, so that only the ordering decides.</summary>
    public CompiledRulebook Compile()
    {
        var faults = _measures.SelectMany(m => new[] { new FaultId(m.Id, Side.Low), new FaultId(m.Id, Side.High) }).ToList();
        var book = new Rulebook
        {
            Name = "Tiny",
            Measures = _measures,
            Ranges = [.. _measures.Select(m => new WantedRange { Measure = m.Id, Club = Club.Iron, Limits = new Limits(0, 10), Source = SourceMark.CommonPractice })],
            Adjustments = [],
            Patterns = [.. _patterns.OrderBy(p => p.Id.Value, StringComparer.Ordinal)],
            TrainAfter = _laws,
            Goals = HouseBook.Book.Goals,
            Drills = [.. faults.SelectMany(f => Enum.GetValues<Stage>().Select(s => DrillFor(f, s))).OrderBy(d => d.Id.Value, StringComparer.Ordinal)],
            Progressions = [.. faults.Select(f => new Progression { Id = ProgressionId.From($"ladder-{f}"), Name = "Ladder", Faults = [f], Rungs = [.. Enum.GetValues<Stage>().Select(s => new Rung(s, [DrillFor(f, s).Id]))] })],
            Cautions = [],
            Dosage = HouseBook.Book.Dosage,
        };
        return CompiledRulebook.Compile(new LoadedRulebook(book, RulebookText.Of([]), new string('0', 64), []));
    }

    private static Drill DrillFor(FaultId fault, Stage stage) => new()
    {
        Id = DrillId.From($"{fault}-{Domain.Terms.Of(stage)}"),
        Name = "Drill",
        Trains = [fault],
        Stages = [stage],
        Rooms = [Domain.Students.Room.Range],
        Club = DrillClub.Full,
        Steps = ["Do it."],
        Cue = "see it",
        DoneWhen = new DoneWhen(8, 10, "swings"),
        Source = SourceMark.CommonPractice,
    };
}
