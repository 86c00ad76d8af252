namespace CoachOffice.Domain.Students;

/// <summary>A look at a mail address before it is kept; whether it works only a message shows.</summary>
public static class MailAddress
{
    /// <summary>One @ with something before it and a dot after it, no white space, no angle brackets, up to 254 characters.</summary>
    public static bool LooksRight(string address)
    {
        ArgumentNullException.ThrowIfNull(address);
        var at = address.IndexOf('@', StringComparison.Ordinal);
        return at > 0 && at == address.LastIndexOf('@') && address.Length <= 254
            && address.IndexOf('.', at) > at + 1 && !address.EndsWith('.')
            && !address.Any(c => char.IsWhiteSpace(c) || char.IsControl(c) || c is '<' or '>' or ',' or ';' or '"');
    }
}
