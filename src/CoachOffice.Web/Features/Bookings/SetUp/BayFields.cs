namespace CoachOffice.Web.Features.Bookings.SetUp;

/// <summary>A bay or room as typed.</summary>
public sealed class BayFields
{
    public Guid? Id { get; set; }

    public int Version { get; set; }

    public string? Name { get; set; }
}
