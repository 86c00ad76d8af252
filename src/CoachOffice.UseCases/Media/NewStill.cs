using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring.Landmarks;

namespace CoachOffice.UseCases.Media;

/// <summary>A still about to be added.</summary>
/// <param name="Lesson">To which lesson.</param>
/// <param name="Shows">What it shows.</param>
/// <param name="Toward">The side of the picture toward the target when it is not mirrored.</param>
/// <param name="Still">The picture.</param>
/// <param name="By">Whose doing.</param>
public sealed record NewStill(Lesson Lesson, StillShows Shows, PictureSide Toward, ReadStill Still, AccountId By);
