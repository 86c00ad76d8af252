using CoachOffice.UseCases.FollowUps;

namespace CoachOffice.UseCases.Bookings.Mail;

/// <summary>What a letter about bookings may speak of.</summary>
public sealed record BookingLetterFacts : OfficeLetterFacts
{
    /// <summary>The offering's name.</summary>
    public required string What { get; init; }

    /// <summary>Day and time of each lesson, written out, with the zone.</summary>
    public required IReadOnlyList<string> When { get; init; }

    /// <summary>How many in all, where not every one is listed.</summary>
    public required int Count { get; init; }

    public required string Coach { get; init; }

    /// <summary>Place, bay and address.</summary>
    public required string Where { get; init; }

    /// <summary>What it costs, or that a package pays; empty when nothing is to be said.</summary>
    public string Price { get; init; } = "";

    /// <summary>Until when cancelling is free and what it costs afterwards; of a cancellation: what it came to.</summary>
    public string Terms { get; init; } = "";

    /// <summary>The page with the student's own lessons.</summary>
    public required string Link { get; init; }

    /// <summary>An earlier letter named another time or place.</summary>
    public bool Changed { get; init; }

    /// <summary>Of a reminder: where the reader gives the hour back.</summary>
    public string CancelLink { get; init; } = "";

    /// <summary>Of an offer: until when the place is kept.</summary>
    public string Until { get; init; } = "";
}
