namespace CoachOffice.Domain.Ledger;

/// <summary>
/// Divides an amount by weights so that nothing is lost: everyone gets the whole part, what is left goes one unit each to the largest remainders
/// (Hamilton's method), ties to the first. A negative amount is divided like the positive one.
/// </summary>
public static class Allocation
{
    /// <summary>One part for each weight, in the same order; they sum to the total.</summary>
    /// <param name="total">What is divided.</param>
    /// <param name="weights">None negative, one positive at least.</param>
    public static IReadOnlyList<Money> By(Money total, IReadOnlyList<long> weights)
    {
        ArgumentNullException.ThrowIfNull(weights);
        var sum = weights.Aggregate(Int128.Zero, (all, weight) => all + weight);
        if (sum <= 0 || weights.Any(w => w < 0)) throw new ArgumentException("Weights are zero or more, and one is more.", nameof(weights));
        var quotas = weights.Select(weight => Int128.DivRem(Int128.Abs(total.MinorUnits) * weight, sum)).ToList();
        var left = (int)(Int128.Abs(total.MinorUnits) - quotas.Aggregate(Int128.Zero, (all, q) => all + q.Quotient));
        var luckier = Enumerable.Range(0, weights.Count).OrderByDescending(i => quotas[i].Remainder).ThenBy(i => i).Take(left).ToHashSet();
        var sign = Math.Sign(total.MinorUnits);
        return [.. quotas.Select((quota, i) => new Money(sign * (long)(quota.Quotient + (luckier.Contains(i) ? 1 : 0)), total.Currency))];
    }

    /// <summary>Equal parts, the first ones a unit larger where it does not divide.</summary>
    public static IReadOnlyList<Money> Evenly(Money total, int parts) => By(total, [.. Enumerable.Repeat(1L, parts)]);
}
