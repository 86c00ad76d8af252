using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Media;

/// <summary>A still with its marks and what they say.</summary>
public sealed record StillView
{
    public required MediaItem Still { get; init; }

    public required StillShows Shows { get; init; }

    public required LessonHeading Heading { get; init; }

    /// <summary>Version of the lesson, which putting values into its sheet starts from.</summary>
    public required int LessonVersion { get; init; }

    public required Student Student { get; init; }

    public required MediaPermission Permission { get; init; }

    /// <summary>Frames a second of the take, when known: it goes with the readings.</summary>
    public required double? FrameRate { get; init; }

    public required IReadOnlyList<StillValue> Values { get; init; }
}
