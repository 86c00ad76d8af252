using CoachOffice.Domain.FollowUps;
using NodaTime;

namespace CoachOffice.UseCases.Students;

/// <summary>A message that left, as far as a student's story tells of it.</summary>
public sealed record SentMessage(Guid Id, MessageKind Kind, Instant At);
