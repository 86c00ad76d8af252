using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.Domain.Media;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>What a student may send clips for, and what they sent already.</summary>
public sealed record ReviewOffersView
{
    public required string Practice { get; init; }

    public required IReadOnlyList<ReviewOffer> Offerings { get; init; }

    /// <summary>The last ones, newest first.</summary>
    public required IReadOnlyList<RemoteReview> Sent { get; init; }

    /// <summary>Whether clips of this student may be kept today.</summary>
    public required MediaPermission Permission { get; init; }

    /// <summary>How much one clip may have, in words.</summary>
    public required string Largest { get; init; }
}

/// <summary>A review that is offered: price and promise in words.</summary>
public sealed record ReviewOffer(OfferingId Id, string Name, string Price, string Promise);
