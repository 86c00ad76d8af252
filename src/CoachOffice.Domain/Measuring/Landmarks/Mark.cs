namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>A landmark where a coach saw it.</summary>
/// <param name="Landmark">Which.</param>
/// <param name="At">Where.</param>
public sealed record Mark(Landmark Landmark, Pixel At);
