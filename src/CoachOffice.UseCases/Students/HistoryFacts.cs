using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Students;

/// <summary>The rows a student's story is told from, each newest first.</summary>
public sealed record HistoryFacts
{
    public required IReadOnlyList<HeldLesson> Lessons { get; init; }

    public required IReadOnlyList<HeldPlan> Plans { get; init; }

    public required IReadOnlyList<CheckIn> CheckIns { get; init; }

    public required IReadOnlyList<Retest> Retests { get; init; }

    /// <summary>Messages that left.</summary>
    public required IReadOnlyList<SentMessage> Sent { get; init; }
}
