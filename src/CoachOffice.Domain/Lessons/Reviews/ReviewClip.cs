using CoachOffice.Domain.Media;
using NodaTime;

namespace CoachOffice.Domain.Lessons.Reviews;

/// <summary>A clip sent in with a remote review that nobody opened yet. The bytes lie in the media folder by their hash; once a lesson is made of the review, the lesson's own rows name them.</summary>
public sealed class ReviewClip
{
    private ReviewClip()
    {
    }

    public Guid Id { get; private set; }

    public ReviewId ReviewId { get; private set; }

    public MediaFormat Format { get; private set; }

    /// <summary>Where the bytes lie.</summary>
    public string Sha256 { get; private set; } = "";

    public long Bytes { get; private set; }

    public Instant AddedAt { get; private set; }

    /// <summary>A clip that was kept.</summary>
    internal static ReviewClip Of(Guid id, ReviewId review, KeptContent clip, Instant now) => new() { Id = id, ReviewId = review, Format = clip.Format, Sha256 = clip.Sha256, Bytes = clip.Bytes, AddedAt = now };
}
