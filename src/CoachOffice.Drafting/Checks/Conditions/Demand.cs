using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Checks.Conditions;

/// <summary>A pattern and the faults that are out whenever it fires.</summary>
internal sealed class Demand
{
    public Demand(Pattern pattern, PatternsAtWork work)
    {
        Pattern = pattern;
        AlwaysOut = work.Answer("always out", () => Out(pattern, work), pattern);
    }

    public Pattern Pattern { get; }

    public HashSet<FaultId> AlwaysOut { get; }

    private static HashSet<FaultId> Out(Pattern pattern, PatternsAtWork work)
    {
        var regions = work.Of(pattern).Where(r => !r.IsEmpty).ToList();
        var seen = regions.SelectMany(r => r.Within[0].Named.Select(place => r.Space.Book.Measures[place].Id)).Distinct().SelectMany(m => new[] { new FaultId(m, Side.Low), new FaultId(m, Side.High) });
        return [.. seen.Where(fault => regions.TrueForAll(r => r.AlwaysOut(fault)))];
    }
}
