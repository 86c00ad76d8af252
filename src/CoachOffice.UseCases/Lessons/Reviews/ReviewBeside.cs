using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.Domain.Media;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>What stands beside the reading form of a lesson that came from far away.</summary>
/// <param name="Review">The review.</param>
/// <param name="Clips">Its clips in the lesson, none while consent is missing.</param>
public sealed record ReviewBeside(RemoteReview Review, IReadOnlyList<MediaId> Clips);
