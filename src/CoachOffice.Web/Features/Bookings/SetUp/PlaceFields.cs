namespace CoachOffice.Web.Features.Bookings.SetUp;

/// <summary>A place as typed.</summary>
public sealed class PlaceFields
{
    public int Version { get; set; }

    public string? Name { get; set; }

    public string? Address { get; set; }
}
