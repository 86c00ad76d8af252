namespace CoachOffice.Web.Features.Access;

/// <summary>What a person enters to sign in.</summary>
public sealed class SignInForm
{
    public string? Email { get; set; }

    public string? Password { get; set; }
}
