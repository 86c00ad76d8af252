using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Lessons.Reviews;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>A remote review as a student sends it in.</summary>
public sealed record ReviewForm
{
    /// <summary>Made when the page was opened: sent twice is one review.</summary>
    public required ReviewId Id { get; init; }

    public required OfferingId OfferingId { get; init; }

    public required ReviewWords Words { get; init; }

    /// <summary>IANA zone of the student's device; empty: the practice's.</summary>
    public string Zone { get; init; } = "";

    /// <summary>The clips, each read once.</summary>
    public IReadOnlyList<Func<Stream>> Clips { get; init; } = [];
}
