using CoachOffice.Benchmarks.Office;
using CoachOffice.Data;
using CoachOffice.Data.Access;
using CoachOffice.Data.Bulk;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.Benchmarks.Calendar;

/// <summary>A practice of ten coaches with so many bookings, eleven a coach and day, around today: half of the days behind, half ahead.</summary>
internal sealed class BusyOffice : IDisposable
{
    private const int Coaches = 10;
    private const int HoursADay = 11;
    private static readonly PlaceId Range = PlaceId.From(new Guid(1, 0, 0, [0, 0, 0, 0, 0, 0, 0, 1]));
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("coachoffice-busy-");

    public static OfferingId Hour { get; } = OfferingId.From(new Guid(2, 0, 0, [0, 0, 0, 0, 0, 0, 0, 1]));

    public string Folder => _folder.FullName;

    public Actor Owner { get; private set; } = Actor.Clock;

    public static async Task<BusyOffice> Of(int bookings)
    {
        var busy = new BusyOffice();
        await using var office = new OpenOffice(busy.Folder);
        var first = new FirstPeople(office);
        await first.Open();
        busy.Owner = first.Owner;
        var today = await office.Do((PracticeClock clock) => clock.Today());
        var students = new List<StudentId>();
        for (var n = 0; n < 200; n++) students.Add(await office.Must((RegisterStudent register) => register.From(new StudentDetails { GivenName = $"Student {n}", FamilyName = "Quill", Email = $"s{n}@example.org", BirthDate = new LocalDate(1984, 4, 2) }, first.Owner)));
        var coaches = await office.Do((OfficeDb db) => SetUp(db, first.Owner.Account!.Value, today));
        await using var scope = Microsoft.Extensions.DependencyInjection.ServiceProviderServiceExtensions.CreateAsyncScope(office.Scopes);
        await Fill(scope.ServiceProvider, (coaches, students, today, bookings));
        return busy;
    }

    public void Dispose() => _folder.Delete(true);

    private static async Task<IReadOnlyList<AccountId>> SetUp(OfficeDb db, AccountId owner, LocalDate today)
    {
        var coaches = new List<AccountId> { owner };
        for (var n = 1; n < Coaches; n++)
        {
            var id = AccountId.From(new Guid(3, 0, 0, [0, 0, 0, 0, 0, 0, 0, (byte)n]));
            db.Users.Add(new Account { Id = id.Value, DisplayName = $"Coach {n}", UserName = $"c{n}@example.org", NormalizedUserName = $"C{n}@EXAMPLE.ORG", Email = $"c{n}@example.org", Policy = Policy.Coach, SecurityStamp = "x" });
            coaches.Add(id);
        }

        var place = Place.Of(Range);
        place.Write("Long Meadow range", "");
        db.AddRange(place, Offering.Of(Hour, new OfferingDetails { Name = "Private hour", Kind = OfferingKind.Private, PriceMinor = 4500, Places = [Range], Coaches = coaches }, Instant.FromUtc(2026, 1, 1, 0, 0)));
        var number = 0;
        foreach (var coach in coaches)
        {
            foreach (var day in Enum.GetValues<IsoDayOfWeek>().Where(d => d != IsoDayOfWeek.None))
                db.WeeklyHours.Add(WeeklyHours.Of(new Guid(4, 0, 0, [0, 0, 0, 0, 0, 0, 0, (byte)++number]), coach, Range, new DayHours(day, new LocalTime(7, 0), new LocalTime(20, 0)), today.PlusYears(-6), null));
        }

        await db.SaveChangesAsync();
        return coaches;
    }

    private static async Task Fill(IServiceProvider services, (IReadOnlyList<AccountId> Coaches, IReadOnlyList<StudentId> Students, LocalDate Today, int Count) of)
    {
        var (db, many, ids) = (Get<OfficeDb>(services), Get<IManyRows>(services), Get<INewIds>(services));
        var offering = await db.Offerings.AsNoTracking().SingleAsync();
        await using var transaction = await db.Database.BeginTransactionAsync();
        var first = of.Today.PlusDays(-(of.Count / (Coaches * HoursADay) / 2));
        for (var begin = 0; begin < of.Count; begin += 10_000)
        {
            var batch = Enumerable.Range(begin, Math.Min(10_000, of.Count - begin)).Select(n => Make(n, offering, of.Coaches, (of.Students, first, ids))).ToList();
            await many.Add(batch, CancellationToken.None);
            await many.Add(batch.SelectMany(b => b.Seats).ToList(), CancellationToken.None);
            await many.Add(batch.SelectMany(b => TimeHolder.AllOf(b).Where(h => h.Kind == TimeHolderKind.Coach).Select(h => TakenTime.Of(ids.Next(), b, h))).ToList(), CancellationToken.None);
        }

        await transaction.CommitAsync();
        await db.Database.ExecuteSqlRawAsync("ANALYZE");
        await db.Database.ExecuteSqlRawAsync("PRAGMA wal_checkpoint(TRUNCATE)");
    }

    private static Booking Make(int n, Offering offering, IReadOnlyList<AccountId> coaches, (IReadOnlyList<StudentId> Students, LocalDate First, INewIds Ids) of)
    {
        var (hour, coach, day) = (n % HoursADay, n / HoursADay % Coaches, n / HoursADay / Coaches);
        var start = of.First.PlusDays(day).At(new LocalTime(7 + hour + (hour > 5 ? 1 : 0), 0));
        var now = Instant.FromUtc(2026, 1, 1, 0, 0);
        var booking = Booking.Of(BookingId.From(of.Ids.Next()), offering, new BookedTime(start, "Europe/Berlin", 60, 0), new BookingWhere(coaches[coach], Range, null), now);
        booking.Seat(SeatId.From(of.Ids.Next()), of.Students[n % of.Students.Count], SeatTerms.Of(offering), now);
        return booking;
    }

    private static T Get<T>(IServiceProvider services)
        where T : notnull => Microsoft.Extensions.DependencyInjection.ServiceProviderServiceExtensions.GetRequiredService<T>(services);
}
