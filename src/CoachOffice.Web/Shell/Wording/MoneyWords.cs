using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger;

namespace CoachOffice.Web.Shell.Wording;

/// <summary>Money said to a person.</summary>
internal static class MoneyWords
{
    /// <summary>What a balance means.</summary>
    public static string Balance(Money balance) => balance.MinorUnits switch
    {
        0 => "Nothing is owed",
        > 0 => $"{balance} owed",
        _ => $"{-balance} on account",
    };

    /// <summary>The small print of an entry: for whom, its number, who wrote it.</summary>
    public static string About(EntryRow row) =>
        string.Join(", ", new[] { row.StudentName, row.Entry.Reference.Length > 0 ? $"no. {row.Entry.Reference}" : "", $"by {row.Entry.By}" }.Where(part => part.Length > 0));

    /// <summary>How fractions of the smallest unit are rounded.</summary>
    public static string Of(Rounding rounding) => rounding switch
    {
        Rounding.HalfUp => "to the nearest, a half up (away from zero)",
        Rounding.HalfEven => "to the nearest, a half to the even neighbour",
        Rounding.HalfDown => "to the nearest, a half down (toward zero)",
        Rounding.Up => "always up (away from zero)",
        Rounding.Down => "always down (toward zero)",
        Rounding.Ceiling => "always toward more",
        _ => "always toward less",
    };

    /// <summary>Whether prices hold the tax.</summary>
    public static string Of(TaxMode mode) => mode == TaxMode.Inclusive ? "with the tax in them" : "without tax, it comes on top";

    /// <summary>How often tax is rounded.</summary>
    public static string Of(TaxScope scope) => scope == TaxScope.PerLine ? "each line of a charge by itself" : "once for all lines of one rate";

    /// <summary>How money changed hands.</summary>
    public static string Of(PaymentMethod method) => MeasureWords.Capital(EntryWords.Of(method));
}
