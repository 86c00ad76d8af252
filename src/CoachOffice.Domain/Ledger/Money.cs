namespace CoachOffice.Domain.Ledger;

/// <summary>An amount of money in whole smallest units of its currency; may be negative. Amounts of two currencies never meet.</summary>
/// <param name="MinorUnits">Count of the smallest unit, e.g. cents.</param>
/// <param name="Currency">Which money.</param>
public readonly record struct Money(long MinorUnits, Currency Currency) : IComparable<Money>
{
    /// <summary>True for nothing at all.</summary>
    public bool IsZero => MinorUnits == 0;

    /// <summary>Plain digits with a point, for programs and fields: <c>-1234.50</c>.</summary>
    public string Amount => MoneyText.Amount(this);

    /// <summary>No money of a currency.</summary>
    public static Money Zero(Currency currency) => new(0, currency);

    /// <summary>The sum; throws when it does not fit.</summary>
    public static Money operator +(Money one, Money other) => new(checked(one.MinorUnits + Same(one, other).MinorUnits), one.Currency);

    /// <summary>The difference; throws when it does not fit.</summary>
    public static Money operator -(Money one, Money other) => new(checked(one.MinorUnits - Same(one, other).MinorUnits), one.Currency);

    /// <summary>The same amount the other way.</summary>
    public static Money operator -(Money money) => new(checked(-money.MinorUnits), money.Currency);

    /// <summary>Less than.</summary>
    public static bool operator <(Money one, Money other) => one.CompareTo(other) < 0;

    /// <summary>More than.</summary>
    public static bool operator >(Money one, Money other) => one.CompareTo(other) > 0;

    /// <summary>At most.</summary>
    public static bool operator <=(Money one, Money other) => one.CompareTo(other) <= 0;

    /// <summary>At least.</summary>
    public static bool operator >=(Money one, Money other) => one.CompareTo(other) >= 0;

    /// <summary>The smaller one.</summary>
    public static Money Min(Money one, Money other) => one <= other ? one : other;

    /// <summary>The sum of many; none gives nothing.</summary>
    public static Money Sum(IEnumerable<Money> all, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(all);
        return all.Aggregate(Zero(currency), (sum, next) => sum + next);
    }

    /// <summary>By amount.</summary>
    public int CompareTo(Money other) => MinorUnits.CompareTo(Same(this, other).MinorUnits);

    /// <summary>For people: the code, then the amount, thousands apart.</summary>
    public override string ToString() => MoneyText.Shown(this);

    private static Money Same(Money one, Money other) =>
        one.Currency == other.Currency ? other : throw new InvalidOperationException($"{one.Currency.Code} and {other.Currency.Code} cannot be counted together.");
}
