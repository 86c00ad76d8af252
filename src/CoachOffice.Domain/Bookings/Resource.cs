using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>A bay or a room at a place: one booking at a time.</summary>
public sealed class Resource
{
    private Resource()
    {
    }

    public ResourceId Id { get; private set; }

    public PlaceId PlaceId { get; private set; }

    public string Name { get; private set; } = "";

    public Instant? ArchivedAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>A new bay or room.</summary>
    public static Resource At(ResourceId id, PlaceId place) => new() { Id = id, PlaceId = place };

    public void Write(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        Name = name.Trim();
    }

    public void Archive(Instant now) => ArchivedAt ??= now;

    public void Restore() => ArchivedAt = null;
}
