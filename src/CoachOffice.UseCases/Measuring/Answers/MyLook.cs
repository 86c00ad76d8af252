using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.UseCases.Measuring.Answers;

/// <summary>A number that is due to be read again, as the student sees it.</summary>
public sealed record MyLook
{
    public required Guid Id { get; init; }

    public required Measure Measure { get; init; }

    /// <summary>The unit numbers without one are taken in.</summary>
    public required Unit Unit { get; init; }

    /// <summary>What it was taken with last time.</summary>
    public required Instrument Instrument { get; init; }

    public double? FrameRate { get; init; }

    public required bool IsSecondLook { get; init; }

    /// <summary>False where the number is made of others, which a coach reads.</summary>
    public required bool CanBeTyped { get; init; }

    /// <summary>When the student's reading came in, or null.</summary>
    public Instant? AnsweredAt { get; init; }

    public LocalDate? AnsweredOn { get; init; }

    public required string Answer { get; init; }
}
