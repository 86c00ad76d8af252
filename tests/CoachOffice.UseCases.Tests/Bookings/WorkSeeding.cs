using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.Tests.Bookings;

/// <summary>Short cuts to hours and terms, where the way there is not what is tested.</summary>
public static class WorkSeeding
{
    public static Task GiveHours(this TestOffice office, AccountId coach, PlaceId place, IsoDayOfWeek day, string from, string until) => office.Change(async db =>
    {
        var ids = new SeededIds((await db.WeeklyHours.CountAsync()) + 7);
        db.Add(WeeklyHours.Of(ids.Next(), coach, place, new DayHours(day, Time(from), Time(until)), new LocalDate(2026, 1, 1), null));
    });

    public static Task SetTerms(this TestOffice office, BookingTermsDetails details) => office.Change(async db =>
    {
        var terms = await db.BookingTerms.SingleOrDefaultAsync();
        if (terms is null) db.Add(terms = BookingTerms.Usual(Guid.Parse("60000000-0000-0000-0000-000000000001")));
        terms.Change(details);
    });

    public static async Task<AccountId> AnotherCoach(this TestOffice office, string name = "Petra Pro")
    {
        var form = new NewAccountForm { DisplayName = name, Email = $"{name.Split(' ')[0]}@harbour-road.example", Password = TestPractice.Password, Policy = Policy.Coach };
        return await office.Must((AddAccount add) => add.For(form, office.Owner));
    }

    private static LocalTime Time(string text) => LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(text).Value;
}
