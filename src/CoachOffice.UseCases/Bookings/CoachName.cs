using CoachOffice.Domain.Access;

namespace CoachOffice.UseCases.Bookings;

/// <summary>A coach as shown in lists.</summary>
public sealed record CoachName(AccountId Id, string Name)
{
    /// <summary>The account is closed: does not teach here any more.</summary>
    public bool IsClosed { get; init; }
}
