using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Reading;

/// <summary>What the readers of the kinds of entries share during one reading: the files, the ids, the faults, and what was read before them.</summary>
internal sealed class Shelf(RuleFiles files, FaultList faults)
{
    public RuleFiles Files { get; } = files;

    public FaultList Faults { get; } = faults;

    public KnownIds Ids { get; } = new(files, faults);

    /// <summary>Sound measures, once they were read.</summary>
    public IReadOnlyDictionary<MeasureId, Measure> Measures { get; set; } = new Dictionary<MeasureId, Measure>();

    /// <summary>Order numbers of the measures, once they were read.</summary>
    public IReadOnlyDictionary<MeasureId, int> Orders { get; set; } = new Dictionary<MeasureId, int>();

    /// <summary>Sound drills, once they were read.</summary>
    public IReadOnlyDictionary<DrillId, Drill> Drills { get; set; } = new Dictionary<DrillId, Drill>();

    /// <summary>Sound cautions, once they were read.</summary>
    public IReadOnlyDictionary<CautionId, Caution> Cautions { get; set; } = new Dictionary<CautionId, Caution>();

    /// <summary>Reads each entry of a kind; null for an entry with faults, which is left out.</summary>
    public IReadOnlyList<T> ReadAll<T>(string kind, Func<Entry, T?> read)
        where T : class
    {
        var found = new List<T>();
        foreach (var node in Files.Entries(kind))
        {
            if (Entry.Of(node, Faults) is not { } entry) continue;
            var value = read(entry);
            entry.Close();
            if (value is not null && entry.Sound) found.Add(value);
        }

        return found;
    }
}
