namespace CoachOffice.Web.Features.Media;

/// <summary>Consent as typed.</summary>
public sealed class ConsentFields
{
    public string? GivenBy { get; set; }

    public string? GivenOn { get; set; }
}
