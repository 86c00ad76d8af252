using CoachOffice.Domain.FollowUps;

namespace CoachOffice.UseCases.FollowUps.Wordings;

/// <summary>Shows words as each sort of reader gets them, with invented people and days.</summary>
public sealed class PreviewLetter(Letters letters, CheckWording check)
{
    /// <summary>The letters; none while something stands against the words.</summary>
    public IReadOnlyList<PreviewedLetter> Of(MessageKind kind, LetterWords? words)
    {
        if (words is not null && check.Of(kind, words).Count > 0) return [];
        return [.. LetterExamples.Of(kind).Select(e => new PreviewedLetter(e.Reader, Render(kind, e, words)))];
    }

    /// <summary>One letter.</summary>
    internal Letter Render(MessageKind kind, LetterExample example, LetterWords? words) =>
        example.Facts is LetterFacts plan ? letters.Render(kind, plan, words) : letters.Render(kind, (OfficeLetterFacts)example.Facts, words);
}

/// <summary>A letter as one reader would get it.</summary>
public sealed record PreviewedLetter(string Reader, Letter Letter);
