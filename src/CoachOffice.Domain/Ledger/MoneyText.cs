using System.Globalization;
using System.Text.RegularExpressions;

namespace CoachOffice.Domain.Ledger;

/// <summary>The one door between amounts and text.</summary>
public static partial class MoneyText
{
    // Between code and amount, and between thousands: lines never break there. The spaces of ISO 80000-1 7.3.1 (from memory).
    private const char Hard = '\u00A0';
    private const char Narrow = '\u202F';

    /// <summary>Reads an amount as people type it: a point or a comma for the decimals, perhaps spaces between thousands, perhaps the code. Never more decimals than the currency has: <c>1,250</c> may be meant as more than a thousand.</summary>
    public static Outcome<Money> Parse(string? text, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(currency);
        var typed = (text ?? "").Replace('\u2212', '-').Trim();
        var match = Form().Match(typed);
        if (!match.Success || (match.Groups["code"] is { Success: true } code && code.Value != currency.Code)) return NotRead(typed, currency);
        var decimals = match.Groups["decimals"].Value;
        if (decimals.Length > currency.Decimals)
            return new Refusal("money-decimals", $"{currency.Code} has {(currency.Decimals == 0 ? "no" : currency.Decimals.ToString(CultureInfo.InvariantCulture))} decimals, and a comma or a point stands for them; write the amount like {Example(currency)}.");
        var digits = string.Concat(match.Groups["whole"].Value.Where(char.IsAsciiDigit));
        if (digits.Length > 12) return NotRead(typed, currency);
        var minor = long.Parse(digits + decimals.PadRight(currency.Decimals, '0'), NumberStyles.None, CultureInfo.InvariantCulture);
        return new Money(match.Groups["sign"].Value == "-" ? -minor : minor, currency);
    }

    internal static string Amount(Money money) => Written(money, "", "-");

    internal static string Shown(Money money) => $"{money.Currency.Code}{Hard}{Written(money, Narrow.ToString(), "\u2212")}";

    private static string Written(Money money, string between, string minus)
    {
        var (whole, rest) = UInt128.DivRem((UInt128)Int128.Abs(money.MinorUnits), (UInt128)money.Currency.MinorPerWhole);
        var groups = ((ulong)whole).ToString("#,0", CultureInfo.InvariantCulture).Replace(",", between, StringComparison.Ordinal);
        var fraction = money.Currency.Decimals == 0 ? "" : "." + ((long)rest).ToString(CultureInfo.InvariantCulture).PadLeft(money.Currency.Decimals, '0');
        return $"{(money.MinorUnits < 0 ? minus : "")}{groups}{fraction}";
    }

    private static Refusal NotRead(string typed, Currency currency) =>
        new("not-an-amount", $"'{(typed.Length <= 24 ? typed : typed[..24] + "...")}' is no amount; write it like {Example(currency)}.");

    private static string Example(Currency currency) => currency.Decimals switch { 0 => "1250", 2 => "12.50 or 12,50", 3 => "12.500 or 12,500", _ => "12.5000 or 12,5000" };

    // Thousands may stand apart by a space only: a point or a comma there cannot be told from decimals.
    [GeneratedRegex(@"^(?:(?<code>[A-Z]{3})\s?)?(?<sign>[+-]?)(?<whole>[0-9]{1,3}(?:[ \u00A0\u202F][0-9]{3})+|[0-9]+)(?:[.,](?<decimals>[0-9]{1,9}))?(?:\s?(?<code>[A-Z]{3}))?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Form();
}
