using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Media;

/// <summary>A still or a clip of a lesson. The bytes lie outside the database, by their hash; several rows may name the same bytes.</summary>
public sealed class MediaItem
{
    private MediaItem()
    {
    }

    public MediaId Id { get; private set; }

    public LessonId LessonId { get; private set; }

    /// <summary>The lesson's student, whose media go when the student is erased.</summary>
    public StudentId StudentId { get; private set; }

    public MediaKind Kind { get; private set; }

    public MediaFormat Format { get; private set; }

    /// <summary>Where the bytes lie in the media folder.</summary>
    public string Sha256 { get; private set; } = "";

    /// <summary>Length of the bytes, those of the small picture included.</summary>
    public long Bytes { get; private set; }

    /// <summary>A small picture of it as JPEG, by hash; empty when there is none.</summary>
    public string SmallSha256 { get; private set; } = "";

    /// <summary>Width in pixels; 0 when not known.</summary>
    public int Width { get; private set; }

    /// <summary>Height in pixels; 0 when not known.</summary>
    public int Height { get; private set; }

    public Instant AddedAt { get; private set; }

    public AccountId AddedBy { get; private set; }

    /// <summary>A new still.</summary>
    public static MediaItem Still(MediaId id, Lesson lesson, StillContent content, AccountId by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(content);
        return new MediaItem
        {
            Id = id,
            LessonId = lesson.Id,
            StudentId = lesson.StudentId,
            Kind = MediaKind.Still,
            Format = content.Picture.Format,
            Sha256 = content.Picture.Sha256,
            SmallSha256 = content.Small.Sha256,
            Bytes = content.Picture.Bytes + content.Small.Bytes,
            Width = content.Width,
            Height = content.Height,
            AddedAt = now,
            AddedBy = by,
        };
    }
}
