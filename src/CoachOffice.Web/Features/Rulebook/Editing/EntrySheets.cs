using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>The forms there are. What has none is edited as text.</summary>
internal static class EntrySheets
{
    private static readonly LineField Id = new("id", "Id") { IsIdentity = true, Optional = true, Hint = "How other entries name it: small letters and hyphens. Left empty, it is made from the name." };
    private static readonly LineField Name = new("name", "Name");
    private static readonly LineField Source = new("source", "Published source") { Optional = true, Hint = "Author and year. Left empty it counts as common practice and is shown as provisional." };

    private static readonly Dictionary<EntryKind, EntrySheet> All = new EntrySheet[] { Range(), Drill(), Pattern(), Case(), Progression(), Caution() }.ToDictionary(s => s.Kind);

    public static EntrySheet? Of(EntryKind kind) => All.GetValueOrDefault(kind);

    private static EntrySheet Range() => new(EntryKind.Range,
    [
        new LineField("measure", "Measure") { IsIdentity = true, Pick = PickKind.Measure },
        Source,
        new LineField("card", "What is known, and how sure") { IsLong = true, Optional = true, Hint = "For a coach to read; it changes no grade." },
        new BandsField("bands", "What you would leave alone, by club") { Hint = "Both edges belong to the band; leave one empty for a band open on that side, all empty for no band. The aim is a narrower band inside, if there is one." },
    ]);

    private static EntrySheet Drill() => new(EntryKind.Drill,
    [
        Id, Name,
        new RowsField("trains", "What it trains") { Pick = PickKind.Fault, Always = true, Hint = "Faults it works on; none for a drill that serves any fault." },
        new ChoiceField("stages", "Stages it is for", Terms.All<Stage>()) { Several = true, Say = word => PlanWords.Of(Terms.Parse<Stage>(word)) },
        new ChoiceField("kit", "Kit it needs", Terms.All<Kit>()) { Several = true },
        new ChoiceField("rooms", "Where it can be done", Terms.All<Room>()) { Several = true },
        new ChoiceField("club", "Swung with", Terms.All<DrillClub>()) { Say = word => word switch { "none" => "no club", "short" => "a short club", _ => "a club at full length" } },
        new RowsField("loads", "What it loads") { Pick = PickKind.Load, Hint = "A recorded limit there withdraws the drill." },
        new LineField("from-age", "From which age") { IsNumber = true, Optional = true },
        new ChoiceField("levels", "Only for these levels", Terms.All<Level>()) { Several = true, Hint = "None ticked: for everybody." },
        new RowsField("steps", "How it is done, step by step") { IsLong = true, IsOrdered = true },
        new LineField("cue", "What to say") { Hint = "A few words the student can keep in mind." },
        new LineField("most-reps", "Most repetitions in one session") { IsNumber = true, Optional = true },
        new LineField("done-when.hits", "Learned at this many good ones") { IsNumber = true },
        new LineField("done-when.of", "Out of") { IsNumber = true },
        new LineField("done-when.what", "What counts as good"),
        new RowsField("opposites", "Pushes further out") { Pick = PickKind.Fault, Hint = "Faults it would make worse; a student who has one is not given it." },
        new RowsField("cautions", "Cautions said with it") { Pick = PickKind.Caution },
        Source,
    ]);

    private static EntrySheet Pattern() => new(EntryKind.Pattern, PatternFields.Of(Id, Name, Source));

    private static EntrySheet Case() => new(EntryKind.Case,
    [
        new LineField("pattern", "Pattern") { IsIdentity = true, Pick = PickKind.Pattern },
        new LineField("name", "What the case shows") { IsIdentity = true },
        new ChoiceField("club", "Club", Terms.All<Club>()) { Say = MeasureWords.Sentence },
        new ReadingsField("readings", "Readings of this student"),
        new LineField("club-speed-goal", "Wanted club speed, m/s") { IsNumber = true, Optional = true },
        new ChoiceField("fires", "With these readings the pattern", ["true", "false"]) { IsFlag = true, Say = word => word == "true" ? "must stand" : "must not stand" },
        new LineField("why", "Why") { IsLong = true },
    ]);

    private static EntrySheet Progression() => new(EntryKind.Progression,
    [
        Id, Name,
        new RowsField("faults", "Faults it is the ladder for") { Pick = PickKind.Fault },
        .. Enum.GetValues<Stage>().Select(stage => new RowsField(Terms.Of(stage), PlanWords.Of(stage)) { Pick = PickKind.Drill, IsOrdered = true, Hint = $"{MeasureWords.Sentence(PlanWords.About(stage))}. The first drill that suits the student is taken." }),
    ]);

    private static EntrySheet Caution() => new(EntryKind.Caution,
    [
        Id,
        new ChoiceField("when", "Said when", Terms.All<CautionOccasion>()),
        new LineField("text", "Sentence") { IsLong = true, Hint = "It never diagnoses and promises nothing. {0} stands for what it concerns, where there is one." },
    ]);
}
