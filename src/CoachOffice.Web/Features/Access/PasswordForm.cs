namespace CoachOffice.Web.Features.Access;

/// <summary>A change of one's own password.</summary>
public sealed class PasswordForm
{
    public string? Current { get; set; }

    public string? New { get; set; }
}
