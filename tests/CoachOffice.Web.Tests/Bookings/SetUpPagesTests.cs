using System.Net;

namespace CoachOffice.Web.Tests.Bookings;

public sealed class SetUpPagesTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync() => _owner = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task An_owner_sets_a_practice_up_for_bookings_from_nothing()
    {
        await _owner.Open("/settings/hours");
        Assert.Equal(["a place", "an offering", "hours"], _owner.Page.QuerySelectorAll(".steps a").Select(a => a.TextContent));
        Assert.Contains("Hours are at a place, and there is none yet.", _owner.Text, StringComparison.Ordinal);

        await _owner.AddsPlace("Harbour Road range", "Bay 1", "Bay 2");
        Assert.Equal(["an offering", "hours"], _owner.Page.QuerySelectorAll(".steps a").Select(a => a.TextContent));

        await _owner.AddsOffering("Private hour", "45,00");
        Assert.Contains("GBP\u00A045.00", _owner.Text, StringComparison.Ordinal);
        Assert.Contains("private lesson, 1 hour", _owner.Text, StringComparison.Ordinal);

        await _owner.AddsHours("1", "09:00", "17:30");
        Assert.Contains("Monday 09:00 to 17:30, Harbour Road range", Words(_owner), StringComparison.Ordinal);
        Assert.Empty(_owner.Page.QuerySelectorAll(".steps"));
    }

    [Fact]
    public async Task What_is_refused_stays_as_typed_beside_its_sentence()
    {
        await _owner.Open("/settings/offering");
        await _owner.Send("main form", ("Input.Name", "Half hour"), ("Input.PriceMinor", "1,250"), ("Input.Minutes", "30"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("GBP has 2 decimals", _owner.Alert, StringComparison.Ordinal);
        Assert.Equal("1,250", _owner.Page.QuerySelector("#Input_PriceMinor")!.GetAttribute("value"));

        await _owner.Send("main form", ("Input.PriceMinor", "25.00"), ("Input.TaxBasisPoints", "17.555"));
        Assert.Contains("Write a tax rate from 0 to 100 percent.", _owner.Alert, StringComparison.Ordinal);
        Assert.Contains("tick at least one place", _owner.Alert, StringComparison.Ordinal);

        await _owner.Open("/settings/hours");
        Assert.Equal(HttpStatusCode.OK, _owner.Status);
        await _owner.Open("/settings/booking-terms");
        await _owner.Send("main form", ("Input.NoticeHours", "a day"));
        Assert.Contains("Write from 0 to 720 hours of notice.", _owner.Alert, StringComparison.Ordinal);
        Assert.Equal("a day", _owner.Page.QuerySelector("#Input_NoticeHours")!.GetAttribute("value"));
        await _owner.Send("main form", ("Input.NoticeHours", "48"));
        Assert.Equal("48", _owner.Page.QuerySelector("#Input_NoticeHours")!.GetAttribute("value"));
    }

    [Fact]
    public async Task Bays_ways_and_places_are_kept_archived_and_brought_back()
    {
        await _owner.AddsPlace("Range", "Bay 1");
        var range = _owner.Path;
        await _owner.AddsPlace("Links");
        await _owner.Send("form[action$='handler=Ways']", _owner.Page.QuerySelectorAll("[name^=Ways]").Select(w => (w.GetAttribute("name")!, (string?)"25")).ToArray());
        await _owner.Open(range);
        Assert.Equal("25", _owner.Page.QuerySelector("[name^=Ways]")!.GetAttribute("value"));

        await _owner.Send("form[action*='SetBay']");
        Assert.Contains("Bay 1 archived", Words(_owner), StringComparison.Ordinal);
        await _owner.Send(".notice form");
        Assert.DoesNotContain("Bay 1 archived", Words(_owner), StringComparison.Ordinal);
        await _owner.Send("form[action$='handler=Archive']");
        Assert.Equal("/settings/places", _owner.Path);
        await _owner.Send(".set-aside form");
        Assert.Equal(range, _owner.Path);
    }

    [Fact]
    public async Task A_coach_keeps_their_own_hours_and_undoes_what_was_taken_out()
    {
        await _owner.AddsPlace("Range");
        var coach = await _owner.LetsIn(_office, "coach");
        var owner = _owner.Page.QuerySelector("body")!.GetAttribute("data-account");
        await coach.Open($"/settings/hours?coach={owner}");
        Assert.Equal("Hours of Person at the coach", coach.Heading);
        Assert.Null(coach.Page.QuerySelector("[name='Except.IsPractice']"));
        Assert.Contains(coach.Page.QuerySelectorAll(".account-list a"), a => a.GetAttribute("href") == "/settings/hours");

        await coach.AddsHours("2", "09:00", "00:00");
        Assert.Contains("Tuesday 09:00 to midnight, Range", Words(coach), StringComparison.Ordinal);
        await coach.Send("form.end", ("last", "2020-01-01"));
        Assert.DoesNotContain("09:00 to midnight", Words(coach), StringComparison.Ordinal);
        await coach.Send(".notice form");
        Assert.Contains("Tuesday 09:00 to midnight, Range", Words(coach), StringComparison.Ordinal);

        await coach.Send("form[action*='Except']", ("Except.FromDay", "2199-05-01"), ("Except.Note", "fishing"), ("Except.IsPractice", "true"));
        Assert.Equal(HttpStatusCode.Forbidden, coach.Status);
        await coach.Open("/settings/hours");
        await coach.Send("form[action*='Except']", ("Except.FromDay", "2199-05-01"), ("Except.Note", "fishing"));
        Assert.Contains("Closed Wed 1 May 2199", Words(coach), StringComparison.Ordinal);
        await coach.Send("form[action*='Drop']");
        Assert.DoesNotContain("fishing", coach.Text, StringComparison.Ordinal);
        await coach.Send(".notice form");
        Assert.Contains("fishing", coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_there_is_not_found()
    {
        foreach (var address in new[] { "/settings/places/00000000-0000-0000-0000-000000000001", "/settings/offering/00000000-0000-0000-0000-000000000001", "/settings/hours?coach=00000000-0000-0000-0000-000000000001" })
        {
            await _owner.Open(address);
            Assert.Equal(HttpStatusCode.NotFound, _owner.Status);
        }
    }

    private static string Words(Visitor visitor) => string.Join(' ', visitor.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
