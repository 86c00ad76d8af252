using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.Web.Tests.Bookings;

public sealed class BookingPagesTests : IAsyncLifetime
{
    private static readonly PlaceId Range = PlaceId.From(Guid.Parse("10000000-0000-0000-0000-000000000001"));
    private static readonly OfferingId Hour = OfferingId.From(Guid.Parse("30000000-0000-0000-0000-000000000001"));
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync()
    {
        _owner = await _office.OpensThePractice();
        await Do(async db =>
        {
            var coach = (await db.Users.SingleAsync()).AccountId;
            var place = Place.Of(Range);
            place.Write("Hill Lane range", "");
            db.AddRange(place, Offering.Of(Hour, new OfferingDetails { Name = "Private hour", Kind = OfferingKind.Private, PriceMinor = 4500, Places = [Range], Coaches = [coach] }, Instant.FromUtc(2026, 1, 1, 0, 0)));
            return await db.SaveChangesAsync();
        });
        await _owner.Open("/students/new");
        await _owner.Send("main form", ("Input.GivenName", "Ann"), ("Input.FamilyName", "Li"), ("Input.Email", "ann@example.org"), ("Input.BirthDate", "1988-06-14"));
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task The_desk_books_marks_moves_cancels_and_puts_back_without_script()
    {
        var desk = await _owner.LetsIn(_office, "desk");
        await Finds(desk, "Li");
        await desk.SendTo("/bookings/new", ".booking-form", Hours("2026-05-05", "10:00", Ticked(desk)));
        Assert.StartsWith("/bookings/", desk.Path, StringComparison.Ordinal);
        Assert.Contains("10:00–11:00", desk.Text, StringComparison.Ordinal);

        await desk.Send("form[action*='handler=move']", ("Input.At", "11:30"));
        Assert.Contains("11:30–12:30", desk.Text, StringComparison.Ordinal);
        await desk.Send("form[action*='handler=cancel']", ("by", "practice"));
        Assert.Contains("Cancelled", desk.Text, StringComparison.Ordinal);
        await desk.Send(".notice form");
        Assert.DoesNotContain("does not take place", desk.Text, StringComparison.Ordinal);

        await desk.Open("/calendar?day=2026-05-05&view=day&coach=all");
        Assert.Contains("Ann Li", desk.Page.QuerySelector(".booking")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_time_that_is_gone_is_said_and_nothing_typed_is_lost()
    {
        await Finds(_owner, "Li");
        var student = Ticked(_owner);
        await _owner.SendTo("/bookings/new", ".booking-form", Hours("2026-05-05", "10:00", student));
        await Finds(_owner, "Li");

        await _owner.SendTo("/bookings/new", ".booking-form", [.. Hours("2026-05-05", "10:30", student), ("Note", "brings a friend")]);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("is booked from 10:00 to 11:00 then", _owner.Alert, StringComparison.Ordinal);
        Assert.Equal("brings a friend", _owner.Page.QuerySelector<IHtmlTextAreaElement>("#Note")!.Value);
        Assert.NotEmpty(_owner.Page.QuerySelectorAll("[name=Students][checked]"));
    }

    [Fact]
    public async Task A_hundred_forms_for_one_time_are_one_lesson_and_ninety_nine_refusals()
    {
        await Finds(_owner, "Li");
        var student = Ticked(_owner);
        var token = _owner.Page.QuerySelector<IHtmlInputElement>("main [name=form-proof]")!.Value;

        var answers = await Task.WhenAll(Enumerable.Range(1, 100).Select(n => Task.Run(async () =>
        {
            List<KeyValuePair<string, string>> fields =
            [
                new("form-proof", token), new("Id", new Guid(n, 0, 0, [0, 0, 0, 0, 0, 0, 0, 1]).ToString()),
                .. Hours("2026-05-05", "10:00", student).Select(f => new KeyValuePair<string, string>(f.Name, f.Value!)),
            ];
            using var answer = await _owner.Client.PostAsync("/bookings/new", new FormUrlEncodedContent(fields), TestContext.Current.CancellationToken);
            return (answer.StatusCode, Text: await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        })));

        Assert.Single(answers, a => a.StatusCode == HttpStatusCode.Found);
        Assert.All(answers.Where(a => a.StatusCode != HttpStatusCode.Found), a => Assert.Contains("is booked from 10:00 to 11:00 then", a.Text, StringComparison.Ordinal));
        Assert.Equal(1, await Do(db => db.Bookings.CountAsync()));
    }

    [Fact]
    public async Task A_booking_dropped_elsewhere_in_the_calendar_is_moved_and_can_be_put_back()
    {
        await Finds(_owner, "Li");
        await _owner.SendTo("/bookings/new", ".booking-form", Hours("2026-05-05", "10:00", Ticked(_owner)));
        await _owner.Open("/calendar?day=2026-05-05&view=week&coach=all");
        var booking = _owner.Page.QuerySelector(".booking")!;

        await _owner.Send("#move-form", ("id", booking.GetAttribute("data-id")), ("version", booking.GetAttribute("data-version")), ("start", "2026-05-07T15:00"), ("minutes", "90"), ("wasStart", "2026-05-05T10:00"), ("wasMinutes", "60"));
        Assert.Equal("2026-05-07T15:00", _owner.Page.QuerySelector(".booking")!.GetAttribute("data-start"));
        await _owner.Send(".notice form");

        Assert.Equal(("2026-05-05T10:00", "60"), (_owner.Page.QuerySelector(".booking")!.GetAttribute("data-start"), _owner.Page.QuerySelector(".booking")!.GetAttribute("data-minutes")));
    }

    [Fact]
    public async Task Who_is_not_signed_in_sees_no_calendar_and_unknown_bookings_are_not_found()
    {
        var stranger = new Visitor(_office);
        foreach (var path in new[] { "/calendar", "/bookings/new", "/bookings/00000000-0000-0000-0000-000000000001" })
        {
            await stranger.Open(path);
            Assert.Equal("/sign-in", stranger.Path);
        }

        foreach (var unknown in new[] { Guid.Empty, Guid.Parse("00000000-0000-0000-0000-000000000001") })
        {
            await _owner.Open($"/bookings/{unknown}");
            Assert.Equal(HttpStatusCode.NotFound, _owner.Status);
        }

        await _owner.Open("/calendar?day=yesterday&view=moon&coach=nobody");
        Assert.Equal(HttpStatusCode.OK, _owner.Status);
    }

    private static async Task Finds(Visitor person, string text)
    {
        await person.Open("/bookings/new");
        await person.Send(".booking-form", ("Text", text));
    }

    private static string Ticked(Visitor person) => person.Page.QuerySelector<IHtmlInputElement>("[name=Students]")!.Value;

    private (string Name, string? Value)[] Hours(string day, string at, string student) =>
    [
        ("OfferingId", Hour.Value.ToString()), ("Students", student), ("Input.Day", day), ("Input.At", at), ("Input.Minutes", ""), ("Input.PlaceId", Range.Value.ToString()), ("Input.CoachId", OwnerId()),
    ];

    private string OwnerId() => Do(db => db.Users.Where(u => u.Email == Owner.Email).Select(u => u.Id.ToString()).SingleAsync()).GetAwaiter().GetResult();

    private async Task<T> Do<T>(Func<OfficeDb, Task<T>> act)
    {
        await using var scope = _office.Services.CreateAsyncScope();
        return await act(scope.ServiceProvider.GetRequiredService<OfficeDb>());
    }
}
