using CoachOffice.Domain.Access;

namespace CoachOffice.Domain.Bookings;

/// <summary>All that a person enters about an offering.</summary>
public sealed record OfferingDetails
{
    public const int LongestMinutes = 12 * 60;

    public required string Name { get; init; }

    public required OfferingKind Kind { get; init; }

    /// <summary>Price of one student's part, in the smallest unit of the practice's currency.</summary>
    public long PriceMinor { get; init; }

    /// <summary>Rate of tax in hundredths of a percent: 2000 is 20 %.</summary>
    public int TaxBasisPoints { get; init; }

    /// <summary>Length in minutes; of a remote review: what answering it usually takes.</summary>
    public int Minutes { get; init; } = 60;

    /// <summary>Minutes the coach keeps free afterwards.</summary>
    public int BufferMinutes { get; init; }

    /// <summary>How many students at most.</summary>
    public int Capacity { get; init; } = 1;

    /// <summary>Hours from a remote review's arrival to its promised answer.</summary>
    public int TurnaroundHours { get; init; }

    /// <summary>Where it may be given.</summary>
    public IReadOnlyList<PlaceId> Places { get; init; } = [];

    /// <summary>Who gives it.</summary>
    public IReadOnlyList<AccountId> Coaches { get; init; } = [];

    /// <summary>Bays or rooms of which one is taken; empty when none is needed.</summary>
    public IReadOnlyList<ResourceId> Resources { get; init; } = [];

    /// <summary>True when students may book it by themselves.</summary>
    public bool IsBookable { get; init; } = true;

    /// <summary>Everything that is wrong, each with the field and what would be right.</summary>
    public IReadOnlyList<Refusal> Check() => [.. Words(), .. Times(), .. Round()];

    private IEnumerable<Refusal> Words()
    {
        if (!OneLine.Shows(Name) || Name.Trim().Length > 120) yield return new("offering-name", "Give it a name of up to 120 characters.", nameof(Name));
        else if (!OneLine.Fits(Name)) yield return new("offering-name-line", OneLine.Wanted, nameof(Name));
        if (PriceMinor is < 0 or > 1_000_000_000) yield return new("offering-price", "Write a price of 0 or more.", nameof(PriceMinor));
        if (TaxBasisPoints is < 0 or > 10_000) yield return new("offering-tax", "Write a tax rate from 0 to 100 percent.", nameof(TaxBasisPoints));
    }

    private IEnumerable<Refusal> Times()
    {
        if (Minutes is < 5 or > LongestMinutes) yield return new("offering-minutes", "Write a length from 5 minutes to 12 hours.", nameof(Minutes));
        if (BufferMinutes is < 0 or > 240) yield return new("offering-buffer", "Keep from 0 to 240 minutes free afterwards.", nameof(BufferMinutes));
        if (Kind == OfferingKind.RemoteReview && TurnaroundHours is < 1 or > 24 * 60) yield return new("offering-turnaround", "Promise an answer within 1 hour to 60 days.", nameof(TurnaroundHours));
    }

    private IEnumerable<Refusal> Round()
    {
        if (Coaches.Count == 0) yield return new("offering-coaches", "Say who gives it: tick at least one coach.", nameof(Coaches));
        if (Kind == OfferingKind.RemoteReview) yield break;
        if (Places.Count == 0) yield return new("offering-places", "Say where it is given: tick at least one place.", nameof(Places));
        var most = Kind switch { OfferingKind.Private => 1, OfferingKind.Pair => 2, _ => 60 };
        if (Capacity < 1 || Capacity > most) yield return new("offering-capacity", $"From 1 to {most} students fit into this kind of lesson.", nameof(Capacity));
    }
}
