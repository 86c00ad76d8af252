namespace CoachOffice.Domain.Bookings;

/// <summary>How long a coach needs from one place to another, either way.</summary>
public sealed class Travel
{
    /// <summary>The longest way that is kept, in minutes.</summary>
    public const int LongestMinutes = 360;

    private Travel()
    {
    }

    public Guid Id { get; private set; }

    public PlaceId OnePlace { get; private set; }

    public PlaceId OtherPlace { get; private set; }

    public int Minutes { get; private set; }

    /// <summary>A way between two places.</summary>
    public static Travel Between(Guid id, PlaceId one, PlaceId other, int minutes) => new() { Id = id, OnePlace = one, OtherPlace = other, Minutes = minutes };

    public void Takes(int minutes) => Minutes = minutes;

    /// <summary>True when it joins these two, in either order.</summary>
    public bool Joins(PlaceId one, PlaceId other) => (OnePlace == one && OtherPlace == other) || (OnePlace == other && OtherPlace == one);
}
