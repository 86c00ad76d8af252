namespace CoachOffice.Domain.Students;

/// <summary>How messages reach a student, as they chose; of a minor the guardian's choice. What they want at all is another matter: that they stop.</summary>
public sealed record ContactWishes
{
    /// <summary>Nothing special: mail, and the practice's night and clock.</summary>
    public static ContactWishes Usual { get; } = new();

    /// <summary>Short notes about lessons come as a text message in place of mail.</summary>
    public bool AppointmentsByText { get; init; }

    /// <summary>The hour of the day from which nothing comes, 0 to 23; null leaves the practice's night.</summary>
    public int? QuietFrom { get; init; }

    /// <summary>The hour until which nothing comes.</summary>
    public int? QuietUntil { get; init; }

    /// <summary>Their own time zone (IANA); empty means the practice's.</summary>
    public string Zone { get; init; } = "";
}
