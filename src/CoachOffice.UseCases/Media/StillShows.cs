using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Media;

/// <summary>What a still shows.</summary>
/// <param name="View">From where it was taken.</param>
/// <param name="Moment">Of the swing.</param>
/// <param name="Swing">Which swing of the lesson, from 1.</param>
public sealed record StillShows(View View, Moment Moment, int Swing);
