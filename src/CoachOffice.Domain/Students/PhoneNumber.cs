namespace CoachOffice.Domain.Students;

/// <summary>Telephone numbers as machines need them (ITU-T E.164): a plus sign, the country's code, at most fifteen digits in all.</summary>
public static class PhoneNumber
{
    private const int Shortest = 8;
    private const int Longest = 15;

    /// <summary>The number without what people put between its digits, or null when it is not written with its country's code.</summary>
    public static string? E164(string? typed)
    {
        var text = new string([.. (typed ?? "").Where(c => !char.IsWhiteSpace(c) && c is not ('-' or '(' or ')' or '.' or '/' or '\u2011'))]);
        if (text.StartsWith("00", StringComparison.Ordinal)) text = "+" + text[2..];
        var digits = text.Length > 0 ? text[1..] : "";
        var good = text.StartsWith('+') && digits.Length is >= Shortest and <= Longest && digits[0] != '0' && digits.All(char.IsAsciiDigit);
        return good ? text : null;
    }
}
