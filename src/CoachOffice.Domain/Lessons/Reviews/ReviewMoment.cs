using NodaTime;

namespace CoachOffice.Domain.Lessons.Reviews;

/// <summary>When a review came in, and in which zone its student reads the promise.</summary>
public sealed record ReviewMoment(Instant Now, string Zone);
