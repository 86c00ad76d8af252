using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Patterns;

/// <summary>What came to light while conditions were held against a lesson. Most conditions leave nothing, so the lists are made only when something is noted.</summary>
internal sealed class MatchNotes
{
    private List<Finding>? _matched;
    private List<MeasureId>? _missing;

    /// <summary>The findings out of range that make conditions true, each once.</summary>
    public IReadOnlyList<Finding> Matched => (IReadOnlyList<Finding>?)_matched ?? [];

    /// <summary>The measures conditions would need to say yes or no, each once.</summary>
    public IReadOnlyList<MeasureId> Missing => (IReadOnlyList<MeasureId>?)_missing ?? [];

    public void Saw(Finding finding)
    {
        if (_matched?.Contains(finding) != true) (_matched ??= []).Add(finding);
    }

    public void Misses(MeasureId measure)
    {
        if (_missing?.Contains(measure) != true) (_missing ??= []).Add(measure);
    }

    public void SortByRow() => _matched?.Sort(static (one, other) => one.Measure.Row.CompareTo(other.Measure.Row));
}
