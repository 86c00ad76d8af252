using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Replay;

/// <summary>Finds the readings a difference of two books may reach. It errs only towards more.</summary>
internal sealed class ReachSearch(Rulebook inForce, Rulebook edited, BookDifference difference)
{
    private static readonly Club[] Clubs = Enum.GetValues<Club>();
    private readonly ReachedSet _found = new();

    public Reach All()
    {
        Measures();
        foreach (var (measure, club) in difference.InRanges) Range(measure, club);
        foreach (var id in difference.InPatterns.Changed)
        {
            Pattern(inForce.Find(id));
            Pattern(edited.Find(id));
        }

        foreach (var fault in difference.InLadders) Out(fault.Measure, Clubs, fault.Side);
        foreach (var measure in difference.InTrainAfter.Work.Union(difference.InGoals.Measures)) Out(measure, Clubs, Side.None);
        return new Reach([.. Whole()], _found.All());
    }

    private IEnumerable<WholeReason> Whole()
    {
        if (difference.Dosage) yield return WholeReason.Dosage;
        if (difference.Cautions) yield return WholeReason.Cautions;
        if (difference.InMeasures.Renamed.Count > 0) yield return WholeReason.MeasureNames;
        if (difference.InMeasures.IsReordered) yield return WholeReason.MeasureOrder;
    }

    private void Measures()
    {
        foreach (var measure in difference.InMeasures.Redefined) Any(measure, Clubs);
        foreach (var measure in difference.InMeasures.Remeasured)
        {
            // The error of a part goes into the error of the whole, which may lie anywhere.
            if (Derived().Any(d => d.Derived!.Parts.Contains(measure))) Any(measure, Clubs);
            else Out(measure, Clubs, Side.None);
        }
    }

    private void Range(MeasureId measure, Club club)
    {
        var (before, after) = (SureRange.Of(inForce, measure, club), SureRange.Of(edited, measure, club));
        if (before is null && after is null) return;
        if (before is null || after is null) Any(measure, [club]);
        else Out(measure, [club], Side.None);
    }

    private void Pattern(Pattern? pattern)
    {
        if (pattern is null) return;
        IReadOnlyList<Club> clubs = pattern.Clubs.Count == 0 ? Clubs : pattern.Clubs;
        foreach (var measure in PatternDifference.SpeakingFor(pattern).Distinct()) Out(measure, clubs, Side.None);
    }

    /// <summary>Values that may be out by one of the books, beyond the side named or either.</summary>
    private void Out(MeasureId measure, IReadOnlyList<Club> clubs, Side side)
    {
        foreach (var club in clubs)
        {
            List<SureRange> ranges = [.. new[] { SureRange.Of(inForce, measure, club), SureRange.Of(edited, measure, club) }.OfType<SureRange>()];
            if (ranges.Count == 0) continue;
            Parts(measure, club);
            if (ranges.Exists(r => r.Inside is null)) _found.Any(measure, club);
            else foreach (var range in ranges) _found.Beyond(measure, club, OnSide(range.Inside!, side));
        }
    }

    private void Any(MeasureId measure, IReadOnlyList<Club> clubs)
    {
        foreach (var club in clubs)
        {
            Parts(measure, club);
            _found.Any(measure, club);
        }
    }

    /// <summary>A derived value is there when all its parts are, so one of them leads to it; what it comes to no single reading says.</summary>
    private void Parts(MeasureId measure, Club club)
    {
        foreach (var derived in Derived().Where(d => d.Id == measure)) _found.Any(derived.Derived!.Parts[0], club);
    }

    private IEnumerable<Measure> Derived() => inForce.Measures.Concat(edited.Measures).Where(m => m.Derived is not null);

    private static Limits OnSide(Limits inside, Side side) =>
        side switch { Side.Low => inside with { High = null }, Side.High => inside with { Low = null }, _ => inside };
}
