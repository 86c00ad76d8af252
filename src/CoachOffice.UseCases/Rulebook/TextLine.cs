namespace CoachOffice.UseCases.Rulebook;

/// <summary>A line of an entry, in the order in which a person reads old and new together.</summary>
/// <param name="Kind">Whether it is in both texts, only in the old or only in the new.</param>
/// <param name="Text">The line.</param>
public sealed record TextLine(LineKind Kind, string Text);
