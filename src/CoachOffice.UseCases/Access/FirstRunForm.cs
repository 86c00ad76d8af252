using CoachOffice.Domain.Access;

namespace CoachOffice.UseCases.Access;

/// <summary>What the first-run page asks for.</summary>
public sealed record FirstRunForm
{
    public required PracticeDetails Practice { get; init; }

    public required string OwnerName { get; init; }

    public required string OwnerEmail { get; init; }

    public required string Password { get; init; }

    /// <summary>True for the demo practice, which never sends anything by SMTP.</summary>
    public bool IsDemo { get; init; }
}
