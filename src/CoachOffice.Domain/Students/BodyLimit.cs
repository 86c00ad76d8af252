namespace CoachOffice.Domain.Students;

/// <summary>A region a student has, or had, a limit in, as told; never a diagnosis.</summary>
public sealed record BodyLimit(Region Region, LimitStatus Status);
