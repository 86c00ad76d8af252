namespace CoachOffice.Domain.Ledger;

/// <summary>How a practice works out its tax.</summary>
/// <param name="Mode">Whether prices hold it.</param>
/// <param name="Rounding">What becomes of fractions.</param>
/// <param name="Scope">How often it is rounded.</param>
public sealed record TaxRule(TaxMode Mode, Rounding Rounding, TaxScope Scope)
{
    /// <summary>One line by itself.</summary>
    public TaxedLine Of(TaxLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Split(line, TaxOf(line.Price, line.Rate));
    }

    /// <summary>The lines of one document, in their order. Rounded once for each rate, the tax is shared out to the lines so that they sum to it.</summary>
    public IReadOnlyList<TaxedLine> Of(IReadOnlyList<TaxLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        if (Scope == TaxScope.PerLine) return [.. lines.Select(Of)];
        var taxed = new TaxedLine[lines.Count];
        foreach (var rate in lines.Select((Line, Place) => (Line, Place)).GroupBy(l => l.Line.Rate))
        {
            var same = rate.ToList();
            var prices = same.Select(l => l.Line.Price).ToList();
            var tax = TaxOf(Money.Sum(prices, prices[0].Currency), rate.Key);
            var shares = Allocation.By(tax, Weights(prices));
            foreach (var (line, share) in same.Zip(shares)) taxed[line.Place] = Split(line.Line, share);
        }

        return taxed;
    }

    private static IReadOnlyList<long> Weights(IReadOnlyList<Money> prices) =>
        prices.All(p => p.IsZero) ? [.. prices.Select(_ => 1L)] : [.. prices.Select(p => p.MinorUnits)];

    // Inside a price p at rate r the tax is p r / (1 + r): at 20 % a sixth (VAT Act 1994 s 19 and the VAT fraction), at 10 % an eleventh.
    private Money TaxOf(Money price, TaxRate rate)
    {
        var whole = Mode == TaxMode.Inclusive ? TaxRate.Whole + rate.BasisPoints : TaxRate.Whole;
        return price with { MinorUnits = RoundedQuotient.Of((Int128)price.MinorUnits * rate.BasisPoints, whole, Rounding) };
    }

    private TaxedLine Split(TaxLine line, Money tax) =>
        new(line.Text, Mode == TaxMode.Inclusive ? line.Price - tax : line.Price, tax, line.Rate);
}
