using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Who may change whose hours: an owner anybody's and the practice's, a coach their own.</summary>
internal static class HoursRight
{
    public static Refusal Refused { get; } = NotAllowed.To("change these hours");

    public static bool Of(Actor actor, AccountId? coach) => actor.MayOwn || (actor.MayTeach && coach is not null && actor.Account == coach);
}
