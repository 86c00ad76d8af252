namespace CoachOffice.UseCases.FollowUps.Texts;

/// <summary>A short note to a telephone.</summary>
/// <param name="Id">The message's own name, the same at every attempt: who takes it twice under one name sends it once.</param>
/// <param name="To">E.164.</param>
/// <param name="Text">Nothing of health or of a plan.</param>
public sealed record TextMessage(string Id, string To, string Text);
