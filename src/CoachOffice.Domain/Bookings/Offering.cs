using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>Something students can book: what it is, how long, how much, where and with whom.</summary>
public sealed class Offering
{
    private Offering()
    {
    }

    public OfferingId Id { get; private set; }

    public string Name { get; private set; } = "";

    public OfferingKind Kind { get; private set; }

    /// <summary>Price of one student's part, in the smallest unit of the practice's currency.</summary>
    public long PriceMinor { get; private set; }

    /// <summary>Rate of tax in hundredths of a percent.</summary>
    public int TaxBasisPoints { get; private set; }

    public int Minutes { get; private set; }

    /// <summary>Minutes the coach keeps free afterwards.</summary>
    public int BufferMinutes { get; private set; }

    public int Capacity { get; private set; }

    /// <summary>Hours to the promised answer of a remote review.</summary>
    public int TurnaroundHours { get; private set; }

    public IReadOnlyList<PlaceId> Places { get; private set; } = [];

    public IReadOnlyList<AccountId> Coaches { get; private set; } = [];

    /// <summary>Bays or rooms of which one is taken; empty when none is needed.</summary>
    public IReadOnlyList<ResourceId> Resources { get; private set; } = [];

    public bool IsBookable { get; private set; }

    public Instant AddedAt { get; private set; }

    /// <summary>Since when it is no longer offered; what is booked stays.</summary>
    public Instant? ArchivedAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>A new offering; details are checked before.</summary>
    public static Offering Of(OfferingId id, OfferingDetails details, Instant now)
    {
        var offering = new Offering { Id = id, AddedAt = now };
        offering.Change(details);
        return offering;
    }

    /// <summary>Takes over what a person entered. What is booked keeps its price and length.</summary>
    public void Change(OfferingDetails details)
    {
        ArgumentNullException.ThrowIfNull(details);
        (Name, Kind, PriceMinor, TaxBasisPoints) = (details.Name.Trim(), details.Kind, details.PriceMinor, details.TaxBasisPoints);
        (Minutes, BufferMinutes, Capacity, TurnaroundHours) = (details.Minutes, details.BufferMinutes, details.Capacity, details.TurnaroundHours);
        (Places, Coaches, Resources, IsBookable) = ([.. details.Places], [.. details.Coaches], [.. details.Resources], details.IsBookable);
    }

    public void Archive(Instant now) => ArchivedAt ??= now;

    public void Restore() => ArchivedAt = null;
}
