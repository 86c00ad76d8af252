using System.Globalization;
using System.Runtime.CompilerServices;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Drills;

/// <summary>Why a drill is not offered to this student: the first reason that applies, body before comfort.</summary>
internal sealed class Withholding(LessonAtHand at, IReadOnlyList<FaultId> forbidden)
{
    private const int Teen = 13;

    /// <summary>Six sessions or more without a change count as in vain.</summary>
    private const int SessionsToJudge = 6;

    // Said of the same drills in draft after draft.
    private static readonly ConditionalWeakTable<Drill, string> RoomsOf = [];

    private readonly List<Region> _current = Regions(at, LimitStatus.Current);
    private readonly List<Region> _past = Regions(at, LimitStatus.Past);

    private StudentFacts Student => at.Facts.Student;

    /// <summary>The reason, or null when the drill can be done at this stage.</summary>
    public DraftWithheld? Of(Drill drill, Stage stage) =>
        Limit(drill, stage) ?? Kit(drill) ?? Room(drill, stage) ?? Level(drill) ?? Age(drill) ?? InVain(drill) ?? Opposite(drill);

    /// <summary>The drills the week has no time for.</summary>
    public DraftWithheld Time(Drill drill) => new(drill.Id.Value, WithheldReason.Time, string.Create(CultureInfo.InvariantCulture, $"{Student.MinutesPerWeek} minutes a week"));

    /// <summary>A tried drill that changed nothing in enough sessions, or made it worse.</summary>
    public static bool IsInVain(TriedDrill tried) =>
        tried.Outcome == TriedOutcome.Worse || (tried.Outcome == TriedOutcome.NoChange && tried.Sessions >= SessionsToJudge);

    /// <summary>Any limit of today leaves rehearsal only: a swing loads the whole body.</summary>
    private DraftWithheld? Limit(Drill drill, Stage stage)
    {
        List<Region>? loaded = null;
        foreach (var region in _current) if (Loads(drill, region, moreThanSwing: false)) (loaded ??= []).Add(region);
        foreach (var region in _past) if (Loads(drill, region, moreThanSwing: true)) (loaded ??= []).Add(region);
        if (loaded is null && _current.Count > 0 && stage > Stage.Rehearse) loaded = _current;
        if (loaded is null) return null;
        return Withhold(drill, WithheldReason.Limit, loaded is [var only] ? Terms.Of(only) : string.Join(", ", loaded.Select(r => Terms.Of(r)).Distinct().Order(StringComparer.Ordinal)));
    }

    private static bool Loads(Drill drill, Region region, bool moreThanSwing)
    {
        foreach (var load in drill.Loads) if (load.Region == region && (load.MoreThanSwing || !moreThanSwing)) return true;
        return false;
    }

    private DraftWithheld? Kit(Drill drill)
    {
        if (HasAll(drill.Kit)) return null;
        List<Kit> missing = [.. drill.Kit.Where(k => !Student.Kit.Contains(k)).Distinct()];
        missing.Sort();
        return Withhold(drill, WithheldReason.Kit, string.Join(", ", missing.Select(k => Terms.Of(k))));
    }

    private bool HasAll(IReadOnlyList<Kit> kit)
    {
        foreach (var piece in kit) if (!Student.Kit.Contains(piece)) return false;
        return true;
    }

    private DraftWithheld? Room(Drill drill, Stage stage)
    {
        if (!drill.Rooms.Contains(Student.Room)) return Withhold(drill, WithheldReason.Room, RoomsOf.GetValue(drill, static d => string.Join(", ", d.Rooms.Order().Select(r => Terms.Of(r)))));
        if (Student.Room == Domain.Students.Room.Home && stage >= Stage.Full && drill.Club != DrillClub.None) return Withhold(drill, WithheldReason.Room, "no full speed at home");
        if (Student.Room == Domain.Students.Room.Garden && drill.Kit.Contains(Domain.Students.Kit.Ball)) return Withhold(drill, WithheldReason.Room, "no real ball in a garden");
        return null;
    }

    private DraftWithheld? Level(Drill drill) =>
        drill.Levels.Count == 0 || drill.Levels.Contains(Student.Level) ? null : Withhold(drill, WithheldReason.Level, string.Join(", ", drill.Levels.Select(l => Terms.Of(l))));

    private DraftWithheld? Age(Drill drill)
    {
        if (drill.FromAge is { } from && at.Facts.Age < from) return Withhold(drill, WithheldReason.Age, string.Create(CultureInfo.InvariantCulture, $"from {from}"));
        var more = at.Facts.Age < Teen ? drill.Loads.FirstOrDefault(l => l.MoreThanSwing) : null;
        return more is null ? null : Withhold(drill, WithheldReason.Age, $"from {Teen}: loads {Terms.Of(more.Region)} more than a swing");
    }

    private DraftWithheld? InVain(Drill drill)
    {
        foreach (var tried in at.Facts.Tried)
            if (tried.Drill == drill.Id && IsInVain(tried)) return Withhold(drill, WithheldReason.TriedInVain, string.Create(CultureInfo.InvariantCulture, $"{tried.Sessions} sessions, {Terms.Of(tried.Outcome)}"));
        return null;
    }

    /// <summary>No drill may push a measured fault further out, nor train what a standing pattern forbids.</summary>
    private DraftWithheld? Opposite(Drill drill)
    {
        FaultId? pushed = null;
        foreach (var fault in drill.Opposites) if (at.Lesson.Out(fault) is not null && !(pushed <= fault)) pushed = fault;
        foreach (var fault in drill.Trains) if (forbidden.Contains(fault) && !(pushed <= fault)) pushed = fault;
        return pushed is { } worst ? Withhold(drill, WithheldReason.OppositeFault, worst.ToString()) : null;
    }

    private static List<Region> Regions(LessonAtHand at, LimitStatus status) => [.. at.Facts.Student.Limits.Where(l => l.Status == status).Select(l => l.Region)];

    private static DraftWithheld Withhold(Drill drill, WithheldReason reason, string detail) => new(drill.Id.Value, reason, detail);
}
