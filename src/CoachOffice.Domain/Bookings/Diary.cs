using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>All that decides whether a time is free, around the days that are looked at.</summary>
public sealed record Diary
{
    /// <summary>When coaches are at work.</summary>
    public required IReadOnlyList<OpenTime> Open { get; init; }

    /// <summary>When they are not free.</summary>
    public IReadOnlyList<CoachTaken> Taken { get; init; } = [];

    /// <summary>When the student comes already.</summary>
    public IReadOnlyList<Interval> Student { get; init; } = [];

    /// <summary>Bays of which one must be free; null when none is needed.</summary>
    public IReadOnlyList<Bay>? Bays { get; init; }

    /// <summary>Ways between places; one that is not named takes no time.</summary>
    public IReadOnlyList<Travel> Ways { get; init; } = [];

    /// <summary>The way from one place to another.</summary>
    public Duration Way(PlaceId from, PlaceId? to) => to is { } other && other != from
        ? Duration.FromMinutes(Ways.FirstOrDefault(w => w.Joins(from, other))?.Minutes ?? 0)
        : Duration.Zero;
}
