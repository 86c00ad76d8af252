using CoachOffice.Data;
using CoachOffice.Data.Access;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.Browser.Tests.Bookings;

/// <summary>Fills an opened practice with places, offerings, students and a week of lessons, some side by side.</summary>
internal sealed class WeekOfLessons(RunningOffice office)
{
    public static LocalDate Monday { get; } = new(2026, 5, 4);

    private static readonly string[] Names =
    [
        "Ann Li", "Oluwaseun-Bartholomew Featherstonehaugh-Wolfeschlegelstein", "Bo Ek", "Maria da Conceição Albuquerque", "Kim Park", "Tom Ash", "Zoë Brontë", "Ian Fo",
    ];

    private readonly List<StudentId> _students = [];
    private Actor _owner = Actor.Clock;

    /// <summary>The first booking made: Ann Li, Monday at ten.</summary>
    public BookingId First { get; private set; }

    public async Task SetUp()
    {
        await Do<OfficeDb, int>(async db =>
        {
            var account = await db.Users.SingleAsync();
            _owner = account.AsActor();
            var (place, bay) = (Place.Of(PlaceId.From(Key(1))), Resource.At(ResourceId.From(Key(2)), PlaceId.From(Key(1))));
            place.Write("Hill Lane range", "2 Hill Lane");
            bay.Write("Bay 3 under the long roof");
            var coaches = new[] { account.AccountId };
            db.AddRange(Enumerable.Range(1, 6).Select(day => WeeklyHours.Of(Key(30 + day), account.AccountId, place.Id, new DayHours((IsoDayOfWeek)day, new LocalTime(8, 0), new LocalTime(18, 0)), Monday.PlusDays(-7), null)));
            db.AddRange(place, bay, Travel(), Of(3, "Private hour", OfferingKind.Private, 60, 1, coaches), Of(4, "Short game group", OfferingKind.Group, 90, 6, coaches), Of(5, "Junior half hour", OfferingKind.Junior, 30, 1, coaches), Of(6, "Nine holes together", OfferingKind.OnCourse, 150, 2, coaches), Of(7, "Two together", OfferingKind.Pair, 45, 2, coaches));
            return await db.SaveChangesAsync();
        });
        foreach (var name in Names)
        {
            var parts = name.Split(' ', 2);
            _students.Add((await Do((RegisterStudent register) => register.From(AStudent.Named(parts[0], parts[1]), _owner))).Value);
        }
    }

    /// <summary>A week of lessons of one coach; those of a second coach overlap them.</summary>
    public async Task Fill()
    {
        First = await Book(3, Monday.At(new LocalTime(10, 0)), _students[0]);
        await Book(5, Monday.At(new LocalTime(9, 0)), _students[2]);
        await Book(4, Monday.At(new LocalTime(14, 0)), [.. _students.Take(5)]);
        for (var day = 1; day < 6; day++)
        {
            await Book(3, Monday.PlusDays(day).At(new LocalTime(8 + (day % 3), 0)), _students[day]);
            await Book(7, Monday.PlusDays(day).At(new LocalTime(12, 15)), _students[1], _students[6]);
            await Book(6, Monday.PlusDays(day).At(new LocalTime(15, 30)), _students[7]);
        }

        var second = AccountId.From(Key(90));
        await Do<OfficeDb, int>(async db =>
        {
            db.Users.Add(new Account { Id = second.Value, DisplayName = "Bartholomew Quillfeather-Ashworth", UserName = "b@example.org", NormalizedUserName = "B@EXAMPLE.ORG", Email = "b@example.org", Policy = Policy.Coach, SecurityStamp = "x" });
            return await db.SaveChangesAsync();
        });
        for (var day = 0; day < 5; day++) await Book(5, Monday.PlusDays(day).At(new LocalTime(10, 15)), second, _students[3 + (day % 2)]);
        await Book(3, Monday.At(new LocalTime(10, 30)), AccountId.From(Key(90)), _students[6], minutes: 45, refused: true);
    }

    private static Guid Key(int n) => new($"00000000-0000-0000-0000-0000000000{n:00}");

    private static Place Travel()
    {
        var links = Place.Of(PlaceId.From(Key(8)));
        links.Write("Old Links", "Shore Lane");
        return links;
    }

    private static Offering Of(int key, string name, OfferingKind kind, int minutes, int capacity, IReadOnlyList<AccountId> coaches) =>
        Offering.Of(OfferingId.From(Key(key)), new OfferingDetails { Name = name, Kind = kind, Minutes = minutes, Capacity = capacity, PriceMinor = 4500, Places = [PlaceId.From(Key(1))], Coaches = coaches }, Instant.FromUtc(2026, 5, 1, 0, 0));

    private Task<BookingId> Book(int offering, LocalDateTime start, params StudentId[] students) => Book(offering, start, _owner.Account!.Value, students);

    private Task<BookingId> Book(int offering, LocalDateTime start, AccountId coach, params StudentId[] students) => Book(new BookingForm { OfferingId = OfferingId.From(Key(offering)), CoachId = coach, PlaceId = PlaceId.From(Key(1)), Start = start, Students = students });

    // Overlaps what the second coach has already: refused, and nothing of it is seen.
    private async Task Book(int offering, LocalDateTime start, AccountId coach, StudentId student, int minutes, bool refused)
    {
        var form = new BookingForm { OfferingId = OfferingId.From(Key(offering)), CoachId = coach, PlaceId = PlaceId.From(Key(1)), Start = start, Minutes = minutes, Students = [student] };
        Assert.Equal(refused, !(await Do((BookLesson book) => book.As(form, _owner))).Succeeded);
    }

    private async Task<BookingId> Book(BookingForm form)
    {
        var booked = await Do((BookLesson book) => book.As(form, _owner));
        Assert.True(booked.Succeeded, booked.Succeeded ? "" : booked.Refusals[0].Sentence);
        return booked.Value;
    }

    private Task<Outcome<T>> Do<TOperation, T>(Func<TOperation, Task<Outcome<T>>> act)
        where TOperation : notnull => Do<TOperation, Outcome<T>>(act);

    private async Task<T> Do<TOperation, T>(Func<TOperation, Task<T>> act)
        where TOperation : notnull
    {
        await using var scope = office.Services.CreateAsyncScope();
        return await act(scope.ServiceProvider.GetRequiredService<TOperation>());
    }
}
