using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Bookings.SetUp;
using CoachOffice.UseCases.Ledger.Packages;
using NodaTime;

namespace CoachOffice.SeedDemo.Year;

/// <summary>What the academy sells by the hour, set up on its first day.</summary>
internal sealed record Diary
{
    public required PlaceId Range { get; init; }

    public required PlaceId Links { get; init; }

    public required OfferingId Private { get; init; }

    public required OfferingId Junior { get; init; }

    public required OfferingId Group { get; init; }

    public required OfferingId OnCourse { get; init; }

    /// <summary>Five private hours.</summary>
    public required PackageOfferId Five { get; init; }

    public static async Task<Diary> Open(Scene scene, LocalDate day, CancellationToken stop)
    {
        var (office, owner) = (scene.Office, scene.Cast.Owner);
        var range = await office.Must((KeepPlace keep) => keep.As(new PlaceForm { Name = "Academy range", Address = "Orchard Road 4, by the walled garden" }, owner, stop));
        var links = await office.Must((KeepPlace keep) => keep.As(new PlaceForm { Name = "Saltmarsh nine", Address = "Dyke End 1" }, owner, stop));
        await office.Must((KeepWays ways) => ways.From(range, new Dictionary<PlaceId, int> { [links] = 20 }, owner, stop));
        List<ResourceId> bays = [];
        foreach (var name in new[] { "Bay 1", "Bay 2", "Screen room" }) bays.Add(await office.Must((KeepBay keep) => keep.As(new BayForm { PlaceId = range, Name = name }, owner, stop)));
        AccountId[] coaches = [scene.Cast.First.Account!.Value, scene.Cast.Second.Account!.Value];
        Task<OfferingId> Keep(OfferingDetails details) => office.Must((KeepOffering keep) => keep.As(new OfferingForm { Details = details with { Coaches = coaches, TaxBasisPoints = 2000 } }, owner, stop));
        var hour = await Keep(new OfferingDetails { Name = "Private hour", Kind = OfferingKind.Private, PriceMinor = 5400, Minutes = 60, BufferMinutes = 10, Places = [range], Resources = bays });
        var diary = new Diary
        {
            Range = range,
            Links = links,
            Private = hour,
            Junior = await Keep(new OfferingDetails { Name = "Junior half hour", Kind = OfferingKind.Junior, PriceMinor = 2400, Minutes = 30, Places = [range], Resources = bays }),
            Group = await Keep(new OfferingDetails { Name = "Short game on Saturday", Kind = OfferingKind.Group, PriceMinor = 1950, Minutes = 90, Capacity = 6, Places = [range] }),
            OnCourse = await Keep(new OfferingDetails { Name = "Nine holes together", Kind = OfferingKind.OnCourse, PriceMinor = 11000, Minutes = 150, Capacity = 2, Places = [links] }),
            Five = await office.Must((AddPackageOffer add) => add.From(PackageOfferId.From(office.Ids.Next()), new PackageOfferForm { Name = "Five private hours", Lessons = 5, Offerings = [hour], Price = "245.00", TaxPercent = "20", ValidMonths = 9, IsShared = true }, owner, stop)),
        };
        await Keep(new OfferingDetails { Name = "Clips answered", Kind = OfferingKind.RemoteReview, PriceMinor = 3500, Minutes = 30, TurnaroundHours = 72 });
        await Hours(scene, diary, day, stop);
        return diary;
    }

    private static async Task Hours(Scene scene, Diary diary, LocalDate day, CancellationToken stop)
    {
        foreach (var coach in new[] { scene.Cast.First, scene.Cast.Second })
        {
            Task<int> Add(PlaceId place, IReadOnlyList<IsoDayOfWeek> days, int from, int until) => scene.Office.Must((AddHours add) => add.As(
                new HoursForm { CoachId = coach.Account!.Value, PlaceId = place, Days = days, From = new LocalTime(from, 0), Until = new LocalTime(until, 0), ValidFrom = day }, scene.Cast.Owner, stop));
            await Add(diary.Range, [IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday, IsoDayOfWeek.Saturday], 9, 19);
            await Add(diary.Links, [IsoDayOfWeek.Wednesday], 8, 13);
        }
    }
}
