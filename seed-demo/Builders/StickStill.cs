using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;

namespace CoachOffice.SeedDemo.Builders;

/// <summary>A figure of sticks at a moment of the swing, in cm toward the target (or the ball) and up from the ground, and what is true of it by the way it was built.</summary>
public sealed record StickStill
{
    public required View View { get; init; }

    public required Moment Moment { get; init; }

    /// <summary>Every point a coach would mark.</summary>
    public required IReadOnlyDictionary<Landmark, (double Toward, double Up)> Points { get; init; }

    /// <summary>Values by the id of the measure, in its own unit.</summary>
    public required IReadOnlyDictionary<string, double> Truth { get; init; }
}
