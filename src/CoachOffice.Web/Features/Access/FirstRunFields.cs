namespace CoachOffice.Web.Features.Access;

/// <summary>The first-run form as typed.</summary>
public sealed class FirstRunFields
{
    public string? OwnerName { get; set; }

    public string? Email { get; set; }

    public string? Password { get; set; }

    public string? PracticeName { get; set; }

    public string? Zone { get; set; }

    public string? Currency { get; set; } = "EUR";

    public string? Units { get; set; } = "metric";

    /// <summary>"empty" or "demo".</summary>
    public string? Start { get; set; } = "empty";
}
