namespace CoachOffice.Domain;

/// <summary>An expected "no": a stable code for programs and tests, and one sentence for the person that says what is wrong and what would be right.</summary>
/// <param name="Code">Kebab-case word, e.g. <c>lesson-not-found</c>. Codes ending in <c>not-found</c> become HTTP 404.</param>
/// <param name="Sentence">A sentence for the person at the screen.</param>
/// <param name="Field">Name of the form field it concerns, when there is one.</param>
public sealed record Refusal(string Code, string Sentence, string? Field = null);
