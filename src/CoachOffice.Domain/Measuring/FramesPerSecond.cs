namespace CoachOffice.Domain.Measuring;

/// <summary>How fast a video was recorded.</summary>
/// <param name="Value">Frames each second; positive.</param>
public readonly record struct FramesPerSecond(double Value);
