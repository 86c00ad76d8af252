using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Bookings.SetUp;
using CoachOffice.UseCases.Tests.Fixtures;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings.SetUp;

public abstract class PlacesAndOfferingsTests(OfficeFixture fixture)
{
    [Fact]
    public async Task Places_have_names_of_their_own_and_two_who_change_one_see_both_values()
    {
        var office = await fixture.Another(opened: true);
        var range = await office.Must((KeepPlace keep) => keep.As(new PlaceForm { Name = " Harbour Road range ", Address = "1 Harbour Road" }, office.Owner));

        Assert.Equal("place-name-taken", (await office.Refuses((KeepPlace keep) => keep.As(new PlaceForm { Name = "harbour road range" }, office.Owner)))[0].Code);
        Assert.Equal("place-name", (await office.Refuses((KeepPlace keep) => keep.As(new PlaceForm { Name = "\u200b " }, office.Owner)))[0].Code);
        await office.Must((KeepPlace keep) => keep.As(new PlaceForm { Id = range, Version = 1, Name = "Range" }, office.Owner));
        var clash = await office.Refuses((KeepPlace keep) => keep.As(new PlaceForm { Id = range, Version = 1, Name = "The range", Address = "1 Harbour Road" }, office.Owner));
        Assert.Equal(Clash.Code, clash[0].Code);
        Assert.Contains(clash, r => r.Sentence == "Name: saved is 'Range', yours is 'The range'.");
        Assert.Equal("place-not-found", (await office.Refuses((KeepPlace keep) => keep.As(new PlaceForm { Id = PlaceId.From(Guid.Parse("70000000-0000-0000-0000-000000000001")), Name = "x" }, office.Owner)))[0].Code);
    }

    [Fact]
    public async Task A_way_holds_in_both_directions_and_one_of_no_time_goes()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        var office = diary.Office;

        await office.Must((KeepWays keep) => keep.From(diary.Links, new Dictionary<PlaceId, int> { [diary.Range] = 40 }, office.Owner));
        Assert.Equal(40, (await office.Do((ReadPlaces read) => read.All())).Minutes(diary.Range, diary.Links));
        await office.Must((KeepWays keep) => keep.From(diary.Range, new Dictionary<PlaceId, int> { [diary.Links] = 0 }, office.Owner));

        Assert.Empty((await office.Do((ReadPlaces read) => read.All())).Ways);
        Assert.Equal("way-minutes", (await office.Refuses((KeepWays keep) => keep.From(diary.Range, new Dictionary<PlaceId, int> { [diary.Links] = 361 }, office.Owner)))[0].Code);
        Assert.Equal("place-not-found", (await office.Refuses((KeepWays keep) => keep.From(diary.Range, new Dictionary<PlaceId, int> { [diary.Range] = 5 }, office.Owner)))[0].Code);
    }

    [Fact]
    public async Task What_is_archived_is_booked_no_more_and_what_is_booked_stays()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        var office = diary.Office;
        var ann = await diary.Student("Ann");
        var booked = await diary.Book(diary.At(new(2026, 3, 10, 10, 0), ann));
        await office.GiveHours(office.Coach.Account!.Value, diary.Range, IsoDayOfWeek.Tuesday, "09:00", "17:00");
        Task<IReadOnlyList<FreeTime>> Free() => office.Must((FindFreeTimes find) => find.For(new FreeTimesQuestion { OfferingId = diary.Private, From = new(2026, 3, 10), Until = new(2026, 3, 10) }, office.Desk));
        Assert.NotEmpty(await Free());

        foreach (var bay in diary.Bays) await office.Must((ArchiveBay archive) => archive.Set(bay, archived: true, office.Owner));
        Assert.Empty(await Free());
        await office.Must((ArchiveBay archive) => archive.Set(diary.Bays[1], archived: false, office.Owner));
        Assert.NotEmpty(await Free());
        await office.Must((ArchivePlace archive) => archive.Set(diary.Range, archived: true, office.Owner));
        Assert.Empty(await Free());
        await office.Must((ArchivePlace archive) => archive.Set(diary.Range, archived: false, office.Owner));
        await office.Must((ArchiveOffering archive) => archive.Set(diary.Private, archived: true, office.Owner));

        Assert.Equal("offering-unknown", (await office.Refuses((BookLesson book) => book.As(diary.At(new(2026, 3, 10, 12, 0), ann), office.Desk)))[0].Code);
        Assert.Equal(BookingStatus.Confirmed, (await office.Read(async db => await db.Bookings.FindAsync(booked)))!.Status);
    }

    [Fact]
    public async Task An_offering_fits_its_places_bays_and_coaches()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        var office = diary.Office;
        var details = new OfferingDetails { Name = "Half hour", Kind = OfferingKind.Private, PriceMinor = 2500, TaxBasisPoints = 2000, Minutes = 30, Places = [diary.Range], Coaches = [office.Coach.Account!.Value], Resources = [diary.Bays[0]] };
        Task<IReadOnlyList<Refusal>> Refused(OfferingDetails wrong) => office.Refuses((KeepOffering keep) => keep.As(new OfferingForm { Details = wrong }, office.Owner));

        var id = await office.Must((KeepOffering keep) => keep.As(new OfferingForm { Details = details }, office.Owner));

        Assert.Equal("offering-name-taken", (await Refused(details with { Name = "half hour" }))[0].Code);
        Assert.Equal("place-without-bay", (await Refused(details with { Name = "A", Places = [diary.Range, diary.Links] }))[0].Code);
        Assert.Equal("bay-elsewhere", (await Refused(details with { Name = "A", Places = [diary.Links] }))[0].Code);
        Assert.Equal("coach-unknown", (await Refused(details with { Name = "A", Coaches = [office.Desk.Account!.Value] }))[0].Code);
        Assert.Equal("place-unknown", (await Refused(details with { Name = "A", Places = [PlaceId.From(id.Value)], Resources = [] }))[0].Code);
        Assert.Equal(["offering-name", "offering-coaches", "offering-places"], (await Refused(new OfferingDetails { Name = "", Kind = OfferingKind.Private })).Select(r => r.Code));
        var clash = await office.Refuses((KeepOffering keep) => keep.As(new OfferingForm { Id = id, Version = 7, Details = details with { Minutes = 45 } }, office.Owner));
        Assert.Contains(clash, r => r.Sentence == "Length: saved is '30', yours is '45'.");
    }

    [Fact]
    public async Task Two_who_save_terms_for_the_first_time_clash_and_only_owners_change_what_is_set_up()
    {
        var office = await fixture.Another(opened: true);
        Assert.Equal(0, (await office.Do((ReadBookingTerms read) => read.Now())).Version);

        Assert.Equal(1, await office.Must((ChangeBookingTerms change) => change.To(0, new BookingTermsDetails { NoticeHours = 48 }, office.Owner)));

        var clash = await office.Refuses((ChangeBookingTerms change) => change.To(0, new BookingTermsDetails { NoticeHours = 12 }, office.Owner));
        Assert.Contains(clash, r => r.Sentence == "Hours of notice: saved is '48', yours is '12'.");
        Assert.Equal("terms-number", (await office.Refuses((ChangeBookingTerms change) => change.To(1, new BookingTermsDetails { LateFeePercent = 101 }, office.Owner)))[0].Code);
        foreach (var actor in new[] { office.Coach, office.Desk, Actor.Student })
        {
            Assert.Equal(NotAllowed.Code, (await office.Refuses((ChangeBookingTerms change) => change.To(1, new BookingTermsDetails(), actor)))[0].Code);
            Assert.Equal(NotAllowed.Code, (await office.Refuses((KeepPlace keep) => keep.As(new PlaceForm { Name = "x" }, actor)))[0].Code);
            Assert.Equal(NotAllowed.Code, (await office.Refuses((KeepBay keep) => keep.As(new BayForm { PlaceId = PlaceId.From(Guid.Empty), Name = "x" }, actor)))[0].Code);
            Assert.Equal(NotAllowed.Code, (await office.Refuses((KeepWays keep) => keep.From(PlaceId.From(Guid.Empty), new Dictionary<PlaceId, int>(), actor)))[0].Code);
            Assert.Equal(NotAllowed.Code, (await office.Refuses((KeepOffering keep) => keep.As(new OfferingForm { Details = new() { Name = "x", Kind = OfferingKind.Private } }, actor)))[0].Code);
        }
    }

    [Fact]
    public async Task Three_things_are_needed_to_take_bookings()
    {
        var office = await fixture.Another(opened: true);
        Assert.Equal(new SetUpState(false, false, false), await office.Do((ReadSetUp read) => read.Now()));

        var diary = await Diary.Of(office);
        Assert.Equal(new SetUpState(true, true, false), await office.Do((ReadSetUp read) => read.Now()));
        await office.GiveHours(office.Coach.Account!.Value, diary.Range, IsoDayOfWeek.Tuesday, "09:00", "17:00");

        Assert.True((await office.Do((ReadSetUp read) => read.Now())).IsReady);
    }
}

public sealed class PlacesAndOfferingsOnSqlite(SqliteOffice office) : PlacesAndOfferingsTests(office), IClassFixture<SqliteOffice>;

public sealed class PlacesAndOfferingsOnPostgreSql(PostgreSqlOffice office) : PlacesAndOfferingsTests(office), IClassFixture<PostgreSqlOffice>;
