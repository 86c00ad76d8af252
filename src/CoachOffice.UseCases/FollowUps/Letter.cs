namespace CoachOffice.UseCases.FollowUps;

/// <summary>A letter as rendered: the same words as text and as HTML.</summary>
public sealed record Letter(string Subject, string Text, string Html);
