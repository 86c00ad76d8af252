using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Plans.Story;

/// <summary>Lays the causes of a draft out as trees: roots that nothing explains first, each consequence once, under the cause the draft names first.</summary>
internal sealed class DriverTree(Draft draft, Domain.Plans.Rulebook book)
{
    private readonly HashSet<FaultId> _placed = [];

    public IReadOnlyList<Driver> Roots()
    {
        var explained = draft.Causes.SelectMany(c => c.Explains).ToHashSet();
        var tops = draft.Causes.Where(c => !explained.Contains(c.Root)).Select(c => c.Root).Distinct().ToList();
        foreach (var top in tops) _placed.Add(top);
        var trees = tops.Select(Plant).ToList();
        // A ring of causes has no top: its first member then stands for it.
        foreach (var cause in draft.Causes.Where(c => _placed.Add(c.Root))) trees.Add(Plant(cause.Root));
        return trees;
    }

    private Driver Plant(FaultId fault)
    {
        var own = draft.Causes.Where(c => c.Root == fault).ToList();
        var below = own.SelectMany(c => c.Explains).Where(_placed.Add).ToList();
        var cause = own.FirstOrDefault();
        var pattern = cause is null ? null : book.Find(PatternId.From(cause.Pattern));
        return new Driver
        {
            Fault = fault,
            Name = MeasureWords.NameOf(fault.Measure, book),
            Grade = draft.Findings.FirstOrDefault(f => f.Measure == fault.Measure.Value)?.Grade ?? Grade.NoRange,
            Pattern = cause?.Pattern,
            PatternName = pattern?.Name,
            Because = string.Join(' ', own.Select(c => c.Because)),
            Rationale = pattern?.Rationale ?? "",
            Source = pattern is null ? "" : pattern.Source.Text,
            Facts = own.SelectMany(c => FactsOf(c.Pattern)).Distinct(StringComparer.Ordinal).ToList(),
            Explains = below.Select(Plant).ToList(),
        };
    }

    private IEnumerable<string> FactsOf(string pattern) =>
        draft.Trace.Where(t => t.Rule == "pattern:" + pattern).SelectMany(t => t.Facts);
}
