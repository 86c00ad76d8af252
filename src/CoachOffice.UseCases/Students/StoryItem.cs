using NodaTime;

namespace CoachOffice.UseCases.Students;

/// <summary>One thing that happened.</summary>
/// <param name="Kind">What kind.</param>
/// <param name="Id">Of the lesson, plan, check-in, re-test or message.</param>
/// <param name="On">The practice's day.</param>
/// <param name="At">For the order within a day.</param>
/// <param name="Sentence">What it was, for the coach.</param>
public sealed record StoryItem(StoryKind Kind, Guid Id, LocalDate On, Instant At, string Sentence);
