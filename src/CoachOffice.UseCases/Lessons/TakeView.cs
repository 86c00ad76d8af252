using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Lessons;

/// <summary>A take with what was read from it.</summary>
public sealed record TakeView
{
    public required TakeId Id { get; init; }

    public required LessonId LessonId { get; init; }

    /// <summary>The lesson's version, which a change of the take raises.</summary>
    public required int Version { get; init; }

    public required StudentId StudentId { get; init; }

    public required string StudentName { get; init; }

    public required LocalDate HeldOn { get; init; }

    public required Club Club { get; init; }

    public required View View { get; init; }

    public required int Swing { get; init; }

    public double? FrameRate { get; init; }

    /// <summary>Standing readings by row of the measure.</summary>
    public required IReadOnlyList<TakeReading> Readings { get; init; }

    /// <summary>Its clips, where they may be shown.</summary>
    public IReadOnlyList<MediaId> Clips { get; init; } = [];
}
