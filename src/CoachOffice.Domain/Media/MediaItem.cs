using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;
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

    /// <summary>The take it shows a moment of, or is the clip of; null while nobody said.</summary>
    public TakeId? TakeId { get; private set; }

    /// <summary>The moment a still shows; null for a clip, or while nobody said.</summary>
    public Moment? Moment { get; private set; }

    /// <summary>What is marked on a still; null for a clip, or while nothing was said of it.</summary>
    public StillMarks? Marks { get; private set; }

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

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

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

    /// <summary>Says what a still shows, and what is marked on it.</summary>
    public void Mark(TakeId take, Moment moment, StillMarks marks)
    {
        if (Kind != MediaKind.Still) throw new InvalidOperationException("Only a still is marked.");
        (TakeId, Moment, Marks) = (take, moment, marks);
    }

    /// <summary>Says which take a clip shows.</summary>
    public void Shows(TakeId take)
    {
        if (Kind != MediaKind.Clip) throw new InvalidOperationException("What a still shows is said with its marks.");
        TakeId = take;
    }

    /// <summary>A new clip, as it came: it is never written anew, since nothing here reads moving pictures.</summary>
    public static MediaItem Clip(MediaId id, Lesson lesson, KeptContent clip, AccountId by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(clip);
        return new MediaItem { Id = id, LessonId = lesson.Id, StudentId = lesson.StudentId, Kind = MediaKind.Clip, Format = clip.Format, Sha256 = clip.Sha256, Bytes = clip.Bytes, AddedAt = now, AddedBy = by };
    }
}
