using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Bookings;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>What a booking that is being made can choose from: offerings, coaches, places, and free times.</summary>
public sealed class NewBookingChoices(ListBookingChoices list, FindFreeTimes find, PracticeClock clock)
{
    private const int Days = 28;

    internal Task<BookingChoices> Now() => list.Now();

    /// <summary>Free times over four weeks from a day on, or from today; with the coach of the form, or with anybody when there is none.</summary>
    internal async Task<Outcome<IReadOnlyList<FreeTime>>> Free(Guid? offering, WhereInput? where, LocalDate? from, StudentId? student, Actor actor)
    {
        if (offering is not { } id || id == Guid.Empty) return new Refusal("offering-unknown", "Pick first what is to be booked.", nameof(BookingForm.OfferingId));
        var first = LocalDate.Max(from ?? LocalDate.MinIsoValue, await clock.Today());
        return await find.For(
            new FreeTimesQuestion
            {
                OfferingId = OfferingId.From(id),
                CoachId = where?.CoachId is { } coach && coach != Guid.Empty ? AccountId.From(coach) : null,
                From = first,
                Until = first.PlusDays(Days - 1),
                Student = student,
            },
            actor);
    }
}
