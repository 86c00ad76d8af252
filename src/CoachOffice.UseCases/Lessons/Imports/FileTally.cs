using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>What a file comes to, row by row: swings by day and club, refusals, doubts. Holds sums and the first rows of each kind, never the file.</summary>
internal sealed class FileTally(IReadOnlyList<RowMeasure> columns)
{
    /// <summary>More swings of one day with one club than this are not one person's lesson.</summary>
    public const int MostSwings = ReadingEntry.MostSwings;

    private const int MostNoted = 200;

    private readonly Dictionary<(LocalDate Day, Club Club), GroupTally> _groups = [];
    private readonly Dictionary<string, int> _reasons = new(StringComparer.Ordinal);
    private readonly List<NotedRow> _refused = [];
    private readonly List<NotedRow> _doubted = [];
    private int _readings;

    public int Swings { get; private set; }

    public int RefusedRows { get; private set; }

    public int DoubtedRows { get; private set; }

    /// <summary>By day, then club.</summary>
    public IReadOnlyList<GroupTally> Groups => [.. _groups.Values.OrderBy(g => g.Day).ThenBy(g => g.Club)];

    /// <summary>How many rows were refused for each kind of reason.</summary>
    public IReadOnlyDictionary<string, int> Reasons => _reasons;

    /// <summary>Where the row's swing belongs; null when it is refused.</summary>
    public GroupTally? Take(ReadRow row, int line)
    {
        if (row.Refused is { } refused) return Refuse(refused);
        if (!_groups.TryGetValue((row.Day, row.Club), out var group)) _groups[(row.Day, row.Club)] = group = new GroupTally(row.Day, row.Club, columns);
        if (group.Swings >= MostSwings) return Refuse(new NotedRow(line, "too-many", $"A lesson holds at most {MostSwings} swings of a file; this one is beyond that."));
        group.Add(row.Values);
        Swings++;
        _readings += row.Values.Count(v => v is not null);
        if (row.Doubt is not { } doubt) return group;
        DoubtedRows++;
        if (_doubted.Count < MostNoted) _doubted.Add(doubt);
        return group;
    }

    /// <summary>All of it, to be kept.</summary>
    public FileOutcome Outcome(IReadOnlyList<KeptLesson> lessons) => new()
    {
        Lessons = lessons,
        Swings = Swings,
        Readings = _readings,
        RefusedRows = RefusedRows,
        Refused = _refused,
        DoubtedRows = DoubtedRows,
        Doubted = _doubted,
    };

    private GroupTally? Refuse(NotedRow row)
    {
        RefusedRows++;
        _reasons[row.Code] = _reasons.GetValueOrDefault(row.Code) + 1;
        if (_refused.Count < MostNoted) _refused.Add(row);
        return null;
    }
}
