using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Drafting.Replay;

/// <summary>
/// Says of past lessons whether an edited rulebook would have drafted other work than the one in force, without drafting what cannot change.
/// Immutable; any number of threads may ask at once.
/// </summary>
public sealed class LessonReplay
{
    private readonly CompiledRulebook _inForce;
    private readonly CompiledRulebook _edited;
    private readonly LessonLook _look;

    private LessonReplay(CompiledRulebook inForce, CompiledRulebook edited)
    {
        (_inForce, _edited) = (inForce, edited);
        Difference = BookDifference.Of(inForce.Book, edited.Book);
        Reach = new ReachSearch(inForce.Book, edited.Book, Difference).All();
        _look = new LessonLook(inForce.Book, edited.Book, Difference);
    }

    /// <summary>Hash of the book in force.</summary>
    public string InForce => _inForce.Sha256;

    /// <summary>Hash of the edited book.</summary>
    public string Edited => _edited.Sha256;

    /// <summary>What the two books define otherwise.</summary>
    public BookDifference Difference { get; }

    /// <summary>Which lessons need to be asked about at all.</summary>
    public Reach Reach { get; }

    /// <summary>Of the book in force and an edited one.</summary>
    public static LessonReplay Between(CompiledRulebook inForce, CompiledRulebook edited)
    {
        ArgumentNullException.ThrowIfNull(inForce);
        ArgumentNullException.ThrowIfNull(edited);
        return new LessonReplay(inForce, edited);
    }

    /// <summary>What the edit does to a lesson's draft: the same answer as drafting it by both books, mostly without.</summary>
    public ReplayResult Of(LessonFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (!CanDraft(_inForce.Book, facts) || !CanDraft(_edited.Book, facts)) return InFull(facts);
        var suspicion = _look.At(facts);
        if (suspicion.IsNone) return ReplayResult.Cut(CutOff.SameFindings, suspicion.IsGradedElse);
        var before = Drafter.Draft(_inForce, facts);
        if (!suspicion.IsOpen && !ConcernsTheWork(before, suspicion)) return ReplayResult.Cut(CutOff.NotInTheWork, suspicion.IsGradedElse);
        return Compared(DraftedWork.Of(before), DraftedWork.Of(Drafter.Draft(_edited, facts)), suspicion.IsGradedElse);
    }

    /// <summary>Drafts the lesson by both books and compares; what <see cref="Of"/> must always agree with.</summary>
    internal ReplayResult InFull(LessonFacts facts)
    {
        var (before, after) = (Work(_inForce, facts), Work(_edited, facts));
        return before is null && after is null ? ReplayResult.Cut(CutOff.NoDraft, false) : Compared(before, after, false);
    }

    private static ReplayResult Compared(DraftedWork? before, DraftedWork? after, bool gradedElse)
    {
        var difference = DraftDifference.Between(before, after);
        return new ReplayResult(difference is null ? CutOff.SameWork : CutOff.Differs, gradedElse, difference);
    }

    private static DraftedWork? Work(CompiledRulebook book, LessonFacts facts) => CanDraft(book.Book, facts) ? DraftedWork.Of(Drafter.Draft(book, facts)) : null;

    /// <summary>A book can draft a lesson when it has every measure read in it, and the student's goal for speed, in units that convert.</summary>
    private static bool CanDraft(Rulebook book, LessonFacts facts) =>
        facts.Readings.All(r => book.Find(r.Measure) is { } measure && measure.Unit.Dimension == r.Value.Unit.Dimension)
        && (facts.Student.ClubSpeedGoal is not { } goal || book.Find(NamedMeasures.ClubSpeed) is not { } speed || speed.Unit.Dimension == goal.Unit.Dimension);

    /// <summary>A ladder is climbed for a focus and for a fault parked because no drill was usable; the order of work concerns all that were in the running, which are those and the ones that wait their turn.</summary>
    private static bool ConcernsTheWork(Draft draft, Suspicion suspicion)
    {
        var climbed = draft.Focus.Select(f => f.Fault).Concat(draft.Parked.Where(p => p.Reason == ParkedReason.NoDrill).Select(p => p.Fault)).ToList();
        var waiting = draft.Parked.Where(p => p.Reason is ParkedReason.TrainAfter or ParkedReason.LimitOfTwo).Select(p => p.Fault);
        return climbed.Exists(suspicion.Ladders.Contains) || climbed.Concat(waiting).Any(suspicion.Shifted.Contains);
    }
}
