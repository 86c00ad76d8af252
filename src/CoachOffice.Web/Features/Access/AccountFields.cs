namespace CoachOffice.Web.Features.Access;

/// <summary>A new account as typed.</summary>
public sealed class AccountFields
{
    public string? DisplayName { get; set; }

    public string? Email { get; set; }

    public string? Password { get; set; }

    public string? Policy { get; set; } = "coach";
}
