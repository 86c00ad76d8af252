namespace CoachOffice.Domain.FollowUps;

/// <summary>The words of a letter as a template: what stands above the program's own closing.</summary>
/// <param name="Subject">One line.</param>
/// <param name="Body">Blocks set apart by empty lines.</param>
public sealed record LetterWords(string Subject, string Body)
{
    /// <summary>Splits a template whose first line is the subject.</summary>
    public static LetterWords Of(string template)
    {
        ArgumentNullException.ThrowIfNull(template);
        var text = template.ReplaceLineEndings("\n");
        var cut = text.IndexOf('\n', StringComparison.Ordinal);
        return cut < 0 ? new LetterWords(text.Trim(), "") : new LetterWords(text[..cut].Trim(), text[(cut + 1)..].Trim('\n'));
    }

    /// <summary>As one template, the subject on the first line.</summary>
    public string AsTemplate => $"{Subject}\n{Body}";
}
