namespace CoachOffice.UseCases.FollowUps.Wordings;

/// <summary>Invented facts a letter is shown and judged with.</summary>
/// <param name="Reader">Who reads it, in words: "an adult", "the guardian of a junior".</param>
/// <param name="Facts">The facts of its kind.</param>
public sealed record LetterExample(string Reader, object Facts)
{
    /// <summary>A guardian reads it.</summary>
    public bool ForGuardian => Facts is LetterFacts { ForGuardian: true } or OfficeLetterFacts { ForGuardian: true };
}
