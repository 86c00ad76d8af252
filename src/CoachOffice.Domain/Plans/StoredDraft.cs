using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>A draft as it was made: its bytes, its input and the book. Insert-only; the truth about what was proposed.</summary>
public sealed record StoredDraft
{
    public required DraftId Id { get; init; }

    public required LessonId LessonId { get; init; }

    public required StudentId StudentId { get; init; }

    /// <summary>The draft's one JSON form.</summary>
    public required string Json { get; init; }

    /// <summary>Canonical JSON of the input it was made from.</summary>
    public required string InputJson { get; init; }

    /// <summary>SHA-256 of the input, lower hex.</summary>
    public required string InputSha256 { get; init; }

    /// <summary>SHA-256 of the rulebook it was made by; its text is kept by this hash.</summary>
    public required string RulebookSha256 { get; init; }

    public required string Engine { get; init; }

    public required Instant MadeAt { get; init; }

    public required AccountId MadeBy { get; init; }
}
