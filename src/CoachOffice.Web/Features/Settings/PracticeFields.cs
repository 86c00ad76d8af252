namespace CoachOffice.Web.Features.Settings;

/// <summary>The practice's details as typed.</summary>
public sealed class PracticeFields
{
    public int Version { get; set; }

    public string? Name { get; set; }

    public string? Zone { get; set; }

    public string? Currency { get; set; }

    public string? Units { get; set; }

    public string? EmergencyNumber { get; set; }

    public bool RequiresSecondFactor { get; set; }

    public string? MailFrom { get; set; }

    public string? PublicAddress { get; set; }
}
