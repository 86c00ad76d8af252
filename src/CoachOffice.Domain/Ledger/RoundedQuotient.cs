namespace CoachOffice.Domain.Ledger;

/// <summary>Division of whole numbers with a rounding rule: exact, with no binary fraction on the way.</summary>
public static class RoundedQuotient
{
    /// <summary>The whole number that stands for the quotient.</summary>
    public static long Of(Int128 dividend, Int128 divisor, Rounding rounding)
    {
        var negative = dividend < 0 != divisor < 0;
        var (whole, rest) = Int128.DivRem(Int128.Abs(dividend), Int128.Abs(divisor));
        if (rest == 0) return Signed(whole, negative);
        var half = (rest * 2).CompareTo(Int128.Abs(divisor));
        var away = rounding switch
        {
            Rounding.HalfUp => half >= 0,
            Rounding.HalfDown => half > 0,
            Rounding.HalfEven => half > 0 || (half == 0 && !Int128.IsEvenInteger(whole)),
            Rounding.Up => true,
            Rounding.Down => false,
            Rounding.Ceiling => !negative,
            Rounding.Floor => negative,
            _ => throw new ArgumentOutOfRangeException(nameof(rounding)),
        };
        return Signed(away ? whole + 1 : whole, negative);
    }

    private static long Signed(Int128 size, bool negative) => checked((long)(negative ? -size : size));
}
