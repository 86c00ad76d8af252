using NodaTime;

namespace CoachOffice.Domain.Ledger;

/// <summary>
/// Which payment paid what: money covers what has been owed longest, in the order both came (common practice where a payer names nothing, no source).
/// An entry and its reversal cancel each other and take no part.
/// </summary>
public sealed class Settlement
{
    private readonly List<(OwedLine Line, long Open)> _owed = [];
    private readonly List<Cover> _covers = [];

    private Settlement()
    {
    }

    /// <summary>What covers what, in order.</summary>
    public IReadOnlyList<Cover> Covers => _covers;

    /// <summary>What is still owed, oldest first, with how much of it.</summary>
    public IEnumerable<(OwedLine Line, long OpenMinor)> Open => _owed.Where(o => o.Open > 0);

    /// <summary>Settles one payer's lines, given in the order they were written.</summary>
    public static Settlement Of(IReadOnlyList<OwedLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var reversed = lines.Where(l => l.Reverses is not null).Select(l => l.Reverses!.Value).ToHashSet();
        var standing = lines.Where(l => l.Reverses is null && !reversed.Contains(l.Id)).ToList();
        var settlement = new Settlement();
        settlement._owed.AddRange(standing.Where(l => l.AmountMinor > 0).Select(l => (l, l.AmountMinor)));
        foreach (var paid in standing.Where(l => l.AmountMinor < 0)) settlement.Pay(paid);
        return settlement;
    }

    /// <summary>What is overdue on a day: owed for longer than so many days.</summary>
    public long OverdueMinor(LocalDate today, int paymentDays) => Open.Where(o => o.Line.On.PlusDays(paymentDays) < today).Sum(o => o.OpenMinor);

    /// <summary>Days since the oldest open line was to be paid; 0 when none is overdue.</summary>
    public int DaysOverdue(LocalDate today, int paymentDays) =>
        Open.Select(o => Math.Max(0, Period.DaysBetween(o.Line.On.PlusDays(paymentDays), today))).DefaultIfEmpty(0).Max();

    private void Pay(OwedLine paid)
    {
        var rest = -paid.AmountMinor;
        for (var i = 0; i < _owed.Count && rest > 0; i++)
        {
            var (line, open) = _owed[i];
            var part = Math.Min(open, rest);
            if (part == 0) continue;
            _covers.Add(new Cover(paid.Id, line.Id, part, line.AmountMinor - open));
            _owed[i] = (line, open - part);
            rest -= part;
        }
    }
}
