using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>Where lessons are given.</summary>
public sealed class Place
{
    private Place()
    {
    }

    public PlaceId Id { get; private set; }

    public string Name { get; private set; } = "";

    /// <summary>As a visitor finds it; goes into invitations.</summary>
    public string Address { get; private set; } = "";

    public Instant? ArchivedAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>A new place.</summary>
    public static Place Of(PlaceId id) => new() { Id = id };

    /// <summary>Takes over what a person entered.</summary>
    public void Write(string name, string address)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(address);
        (Name, Address) = (name.Trim(), address.Trim());
    }

    public void Archive(Instant now) => ArchivedAt ??= now;

    public void Restore() => ArchivedAt = null;
}
