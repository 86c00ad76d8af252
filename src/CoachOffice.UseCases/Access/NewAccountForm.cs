using CoachOffice.Domain.Access;

namespace CoachOffice.UseCases.Access;

/// <summary>A person who shall sign in.</summary>
public sealed record NewAccountForm
{
    public required string DisplayName { get; init; }

    public required string Email { get; init; }

    public required string Password { get; init; }

    public required Policy Policy { get; init; }
}
