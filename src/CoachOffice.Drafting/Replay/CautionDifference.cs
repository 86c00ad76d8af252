using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Replay;

/// <summary>Cautions two books word or call for otherwise; those that drills name count with the drills.</summary>
internal sealed class CautionDifference
{
    private readonly HashSet<CautionOccasion> _occasions;

    public CautionDifference(Rulebook inForce, Rulebook edited)
    {
        var (before, after) = (inForce.Cautions.ToHashSet(), edited.Cautions.ToHashSet());
        before.SymmetricExceptWith(after);
        _occasions = [.. before.Select(c => c.Occasion).Where(o => o != CautionOccasion.Drill)];
    }

    /// <summary>True when there are none.</summary>
    public bool IsNothing => _occasions.Count == 0;

    /// <summary>True when one of them may be given in a lesson with these facts; never false when one is.</summary>
    public bool MayShow(LessonFacts facts, bool somethingIsOut) => _occasions.Any(o => May(o, facts, somethingIsOut));

    private static bool May(CautionOccasion occasion, LessonFacts facts, bool somethingIsOut) => occasion switch
    {
        CautionOccasion.Minor => facts.Age < 18,
        CautionOccasion.UnderThirteen => facts.Age < 13,
        CautionOccasion.LimitCurrent => HasLimit(facts, LimitStatus.Current),
        CautionOccasion.LimitPast => HasLimit(facts, LimitStatus.Past),
        CautionOccasion.LimitCleared => HasLimit(facts, LimitStatus.Cleared),
        CautionOccasion.SwingingClub or CautionOccasion.HittingBalls or CautionOccasion.FullSpeed => somethingIsOut,
        _ => true,
    };

    private static bool HasLimit(LessonFacts facts, LimitStatus status) => facts.Student.Limits.Any(l => l.Status == status);
}
