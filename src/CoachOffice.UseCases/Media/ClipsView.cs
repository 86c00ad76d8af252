using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Media;

/// <summary>The clips of a lesson, and whether there may be any.</summary>
public sealed record ClipsView
{
    public required LessonId Lesson { get; init; }

    public required LessonHeading Heading { get; init; }

    public required Student Student { get; init; }

    public required MediaPermission Permission { get; init; }

    /// <summary>In the order they were added.</summary>
    public required IReadOnlyList<MediaItem> Clips { get; init; }

    /// <summary>The takes the clips show, where somebody said.</summary>
    public required IReadOnlyList<Take> Takes { get; init; }

    /// <summary>Bytes of all stills and clips of the practice.</summary>
    public required long Used { get; init; }

    /// <summary>So many bytes it may keep.</summary>
    public required long Quota { get; init; }

    /// <summary>So many bytes one clip may have.</summary>
    public required long Largest { get; init; }

    /// <summary>The take a clip shows; null while nobody said.</summary>
    public Take? TakeOf(MediaItem clip)
    {
        ArgumentNullException.ThrowIfNull(clip);
        return Takes.FirstOrDefault(t => t.Id == clip.TakeId);
    }
}
