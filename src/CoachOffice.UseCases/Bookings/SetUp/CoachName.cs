using CoachOffice.Domain.Access;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>A coach to pick.</summary>
/// <param name="Id">Who.</param>
/// <param name="Name">As shown.</param>
/// <param name="IsClosed">Does not teach here any more.</param>
public sealed record CoachName(AccountId Id, string Name, bool IsClosed);
