namespace CoachOffice.Web.Features.Students;

/// <summary>The adult who is the contact of a minor, as typed.</summary>
public sealed class GuardianFields
{
    public string? Name { get; set; }

    public string? Email { get; set; }

    public string? Phone { get; set; }

    public string? Relation { get; set; }
}
