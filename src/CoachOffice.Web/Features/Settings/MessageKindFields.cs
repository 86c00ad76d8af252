namespace CoachOffice.Web.Features.Settings;

/// <summary>What is decided about a kind of message, as typed.</summary>
public sealed class MessageKindFields
{
    public int Version { get; set; }

    public bool IsOn { get; set; }

    public string? Timing { get; set; }

    public bool WaitsForCoach { get; set; }

    public string? Subject { get; set; }

    public string? Body { get; set; }
}
