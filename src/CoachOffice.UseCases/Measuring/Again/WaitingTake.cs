using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.UseCases.Measuring.Again;

/// <summary>A take that waits to be read again.</summary>
public sealed record WaitingTake
{
    public required Guid Id { get; init; }

    public required LessonId Lesson { get; init; }

    public required TakeId Take { get; init; }

    public required string StudentName { get; init; }

    public required LocalDate HeldOn { get; init; }

    public required Club Club { get; init; }

    public required View View { get; init; }

    public required int Swing { get; init; }

    public required Instant AskedAt { get; init; }
}
