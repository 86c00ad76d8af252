using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using CoachOffice.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests.Bookings;

/// <summary>A student at their own lessons, in a browser without script.</summary>
public sealed class MyLessonsTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;
    private Visitor _ida = null!;

    public async ValueTask InitializeAsync()
    {
        _owner = await _office.OpensThePractice();
        await _owner.AddsPlace("Range");
        await _owner.AddsOffering("Private hour", "45,00");
        for (var day = 1; day <= 7; day++) await _owner.AddsHours($"{day}", "08:00", "20:00");
        _ida = await _owner.HandsOutLessons(_office, await _owner.Registers());
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_student_books_in_five_pages_and_sees_price_place_and_terms_before()
    {
        Assert.Equal(("/my-lessons", "Lessons of Ida"), (_ida.Path, _ida.Heading));
        Assert.DoesNotContain("Sommerfeld", _ida.Text, StringComparison.Ordinal);
        await _ida.PicksATime();

        Assert.Equal("Book this lesson", _ida.Heading);
        Assert.Contains("GBP\u00A045.00", _ida.Text, StringComparison.Ordinal);
        Assert.Contains("Range", _ida.Text, StringComparison.Ordinal);
        Assert.Matches(@"Until \w+ \d+ \w+, \d\d:\d\d \(Europe/London\) cancelling or moving costs nothing; after that half the price, GBP.22\.50, is owed\.", _ida.Text);
        Assert.Contains("It is not booked yet.", _ida.Text, StringComparison.Ordinal);
        Assert.Single(_ida.Page.QuerySelectorAll("button.main"));
        await _ida.Send("form[action*='Confirm']");

        Assert.Equal("Private hour", _ida.Heading);
        Assert.Contains("this costs nothing.", _ida.Text, StringComparison.Ordinal);
        await _ida.Open("/my-lessons");
        Assert.Contains("Private hour with Marianne Wetherby", Words(_ida.Text), StringComparison.Ordinal);
        Assert.DoesNotContain("owed", _ida.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pressing_twice_and_going_back_do_no_harm()
    {
        await _ida.PicksADay();
        var times = (IHtmlFormElement)_ida.Page.QuerySelector("form:has(.time-list)")!;
        var fields = times.QuerySelectorAll("input").Select(i => (i.GetAttribute("name")!, i.GetAttribute("value"))).Append(("time", times.QuerySelector("button")!.GetAttribute("value"))).ToArray();
        var (address, page) = (times.GetAttribute("action")!, _ida.Answer.RequestMessage!.RequestUri!.PathAndQuery);
        await _ida.SendTo(address, "form:has(.time-list)", fields);
        var lesson = _ida.Path;

        await _ida.Open(page);
        await _ida.SendTo(address, "form:has(.time-list)", fields);
        Assert.Equal(lesson, _ida.Path);
        await _ida.Send("form[action*='Confirm']");
        await _ida.Open(page);
        await _ida.SendTo(address, "form:has(.time-list)", fields);
        Assert.Equal((lesson, "Private hour"), (_ida.Path, _ida.Heading));
        await _ida.SendTo($"{lesson}?handler=Confirm", "form[action*='Cancel']");

        Assert.Equal((1, 1), (await Count(db => db.Bookings), await Count(db => db.Seats)));
    }

    [Fact]
    public async Task A_lesson_is_moved_and_cancelled_after_its_cost_was_said()
    {
        await _ida.BooksALesson();
        var lesson = _ida.Path;
        await _ida.Open(_ida.Page.QuerySelector("a[href$='/move']")!.GetAttribute("href")!);
        await _ida.Open(_ida.Page.QuerySelectorAll(".day-list a")[^1].GetAttribute("href")!);
        await _ida.Open(_ida.Page.QuerySelector(".time-list a")!.GetAttribute("href")!);
        Assert.Contains("moving costs nothing", _ida.Text, StringComparison.Ordinal);
        var then = _ida.Page.QuerySelectorAll("dl.facts strong")[^1].TextContent;
        await _ida.Send("form[method=post]");
        Assert.Equal(lesson, _ida.Path);
        Assert.Contains(then, _ida.Text, StringComparison.Ordinal);

        await _ida.Send("form[action*='Cancel']");
        Assert.Equal("/my-lessons", _ida.Path);
        Assert.Contains("The lesson is cancelled.", _ida.Text, StringComparison.Ordinal);
        Assert.Contains("Nothing is booked.", _ida.Text, StringComparison.Ordinal);
        await _ida.Open(lesson);
        Assert.Contains("This lesson: cancelled.", _ida.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_students_lesson_and_an_office_without_a_link_find_nothing()
    {
        await _ida.BooksALesson();
        var lesson = _ida.Path;
        var ben = await _owner.HandsOutLessons(_office, await _owner.Registers("Ben", "Okafor"));

        foreach (var address in new[] { lesson, lesson + "/move", "/my-lessons/00000000-0000-0000-0000-000000000001", "/my-lessons/book?offering=00000000-0000-0000-0000-000000000001" })
        {
            await ben.Open(address);
            Assert.Equal(HttpStatusCode.NotFound, ben.Status);
        }

        foreach (var deed in new[] { "?handler=Confirm", "?handler=Cancel", "/move" })
        {
            await ben.Open("/my-lessons/book");
            await ben.Open(ben.Page.QuerySelector("main ul.rows a")!.GetAttribute("href")!);
            await ben.SendTo(lesson + deed, "form:has(#first)", ("to", "x"));
            Assert.Equal(HttpStatusCode.NotFound, ben.Status);
        }

        foreach (var person in new[] { _owner, await _owner.LetsIn(_office, "desk"), new Visitor(_office) })
        {
            foreach (var address in new[] { "/my-lessons", "/my-lessons/book", lesson, lesson + "/move" })
            {
                await person.Open(address);
                Assert.Equal((HttpStatusCode.NotFound, "This link does not open anything now"), (person.Status, person.Heading));
            }
        }
    }

    [Fact]
    public async Task Without_the_pages_own_proof_nothing_is_done()
    {
        await _ida.BooksALesson();
        var bare = await _ida.Client.PostAsync(new Uri($"{_ida.Path}?handler=Cancel", UriKind.Relative), new FormUrlEncodedContent([new("late", "true")]), TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.BadRequest, bare.StatusCode);
        Assert.Equal(1, await Count(db => db.Seats.Where(s => s.Status == Domain.Bookings.SeatStatus.Booked)));
    }

    [Fact]
    public async Task Times_are_read_on_another_clock_from_page_to_page()
    {
        await _ida.Open("/my-lessons?zone=Australia/Sydney");
        Assert.Contains("and of Australia/Sydney where they differ", Words(_ida.Text), StringComparison.Ordinal);
        await _ida.PicksATime();

        Assert.Contains("in Australia/Sydney", _ida.Text, StringComparison.Ordinal);
        Assert.Contains("(Europe/London)", _ida.Text, StringComparison.Ordinal);
        await _ida.Send("form[action*='Confirm']");
        Assert.Contains("in Australia/Sydney", _ida.Text, StringComparison.Ordinal);
        await _ida.Open("/my-lessons?zone=Nowhere/Land");
        Assert.Equal(HttpStatusCode.OK, _ida.Status);
    }

    [Fact]
    public async Task A_student_joins_the_waiting_list_and_leaves_it()
    {
        await _ida.Open("/my-lessons/book");
        await _ida.Open(_ida.Page.QuerySelector("main ul.rows a")!.GetAttribute("href")!);
        await _ida.Send("form:has(#first)");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _ida.Status);
        Assert.Contains("There are free times then", _ida.Alert, StringComparison.Ordinal);

        var today = DateOnly.Parse(_ida.Page.QuerySelector("#first")!.GetAttribute("value")!);
        await _owner.Open("/settings/hours");
        await _owner.Send("form[action*='Except']", ("Except.FromDay", $"{today:yyyy-MM-dd}"), ("Except.UntilDay", $"{today.AddDays(90):yyyy-MM-dd}"), ("Except.IsPractice", "true"));
        await _ida.Send("form:has(#first)");
        Assert.Equal("/my-lessons", _ida.Path);
        Assert.Contains("any time from", _ida.Text, StringComparison.Ordinal);
        await _ida.Send("form[action*='Leave']");
        Assert.DoesNotContain("You wait for", _ida.Page.QuerySelector("#main")!.TextContent.Replace("You wait for it no longer.", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    private async Task<int> Count<T>(Func<OfficeDb, IQueryable<T>> of)
    {
        await using var scope = _office.Services.CreateAsyncScope();
        return await of(scope.ServiceProvider.GetRequiredService<OfficeDb>()).CountAsync();
    }

    private static string Words(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
