namespace CoachOffice.UseCases.Students;

/// <summary>Telephone numbers held against each other: digits alone, without what stands before a number at home or abroad.</summary>
internal static class PhoneDigits
{
    private const int Compared = 8;

    /// <summary>The last eight digits; empty when there are fewer, which tell nobody apart.</summary>
    public static string Of(string phone)
    {
        var digits = new string([.. phone.Where(char.IsAsciiDigit)]);
        return digits.Length < Compared ? "" : digits[^Compared..];
    }
}
