using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings;

/// <summary>What a practice needs before it can book: two places twenty-five minutes apart, two bays at the first, and some offerings.</summary>
public sealed class Diary
{
    private Diary(TestOffice office) => Office = office;

    public TestOffice Office { get; }

    public PlaceId Range { get; } = PlaceId.From(Guid.Parse("10000000-0000-0000-0000-000000000001"));

    public PlaceId Links { get; } = PlaceId.From(Guid.Parse("10000000-0000-0000-0000-000000000002"));

    public IReadOnlyList<ResourceId> Bays { get; } = [ResourceId.From(Guid.Parse("20000000-0000-0000-0000-000000000001")), ResourceId.From(Guid.Parse("20000000-0000-0000-0000-000000000002"))];

    public OfferingId Private { get; } = OfferingId.From(Guid.Parse("30000000-0000-0000-0000-000000000001"));

    public OfferingId Group { get; } = OfferingId.From(Guid.Parse("30000000-0000-0000-0000-000000000002"));

    public OfferingId OnCourse { get; } = OfferingId.From(Guid.Parse("30000000-0000-0000-0000-000000000003"));

    public static async Task<Diary> Of(TestOffice office)
    {
        var diary = new Diary(office);
        await office.Change(db =>
        {
            db.AddRange(diary.Places().Concat(diary.Offerings(office)));
            return Task.CompletedTask;
        });
        return diary;
    }

    /// <summary>A form for an hour with the coach at the range.</summary>
    public BookingForm At(LocalDateTime start, params StudentId[] students) =>
        new() { OfferingId = Private, CoachId = Office.Coach.Account!.Value, PlaceId = Range, Start = start, Students = students };

    public Task<StudentId> Student(string given) => Office.Register(AStudent.Named(given, "Booker"));

    public Task<BookingId> Book(BookingForm form) => Office.Must((BookLesson book) => book.As(form, Office.Desk));

    private object[] Places()
    {
        var (range, links) = (Place.Of(Range), Place.Of(Links));
        range.Write("Harbour Road range", "1 Harbour Road");
        links.Write("Old Links", "Shore Lane");
        var bays = Bays.Select((id, n) =>
        {
            var bay = Resource.At(id, Range);
            bay.Write($"Bay {n + 1}");
            return bay;
        });
        return [range, links, .. bays, Travel.Between(Guid.Parse("40000000-0000-0000-0000-000000000001"), Range, Links, 25)];
    }

    private IEnumerable<object> Offerings(TestOffice office)
    {
        AccountId[] coaches = [office.Coach.Account!.Value, office.Owner.Account!.Value];
        yield return Offering.Of(Private, new OfferingDetails { Name = "Private hour", Kind = OfferingKind.Private, PriceMinor = 4500, Minutes = 60, Places = [Range, Links], Coaches = coaches, Resources = Bays }, office.Now);
        yield return Offering.Of(Group, new OfferingDetails { Name = "Short game group", Kind = OfferingKind.Group, PriceMinor = 2000, Minutes = 90, BufferMinutes = 15, Capacity = 4, Places = [Range], Coaches = coaches }, office.Now);
        yield return Offering.Of(OnCourse, new OfferingDetails { Name = "Nine holes together", Kind = OfferingKind.OnCourse, PriceMinor = 9000, Minutes = 120, Places = [Links], Coaches = coaches }, office.Now);
    }
}
