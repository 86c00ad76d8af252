namespace CoachOffice.Domain.Measuring;

/// <summary>An intraclass correlation with its 95 % interval: how much of what differs between readings is really there. 1 is all of it; it depends on how different the swings were, so it is no error.</summary>
/// <param name="Form">Which of the six.</param>
/// <param name="Value">The estimate; may be negative when readings of one target differ more than targets do.</param>
/// <param name="Interval">95 % confidence limits.</param>
public sealed record Icc(IccForm Form, double Value, Limits Interval);
