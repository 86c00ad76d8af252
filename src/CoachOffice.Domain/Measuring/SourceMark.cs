namespace CoachOffice.Domain.Measuring;

/// <summary>Where a number or rule comes from. Without a citation it is common practice and shown as provisional.</summary>
/// <param name="IsPublished">True when a publication states it.</param>
/// <param name="Text">The citation, or "common practice, no source".</param>
public sealed record SourceMark(bool IsPublished, string Text)
{
    /// <summary>Trade facts without a published source.</summary>
    public static SourceMark CommonPractice { get; } = new(false, "common practice, no source");
}
