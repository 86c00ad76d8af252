using CoachOffice.Domain;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>Refusals several operations on remote reviews give.</summary>
internal static class ReviewRefusals
{
    public static Refusal NotFound { get; } = new("review-not-found", "There is no such review.");

    public static Refusal Over { get; } = new("review-over", "This review is answered or taken back already.");

    public static Refusal Busy { get; } = new("changed-meanwhile", "Somebody else opened or ended this review at the same moment; look at it again.");
}
