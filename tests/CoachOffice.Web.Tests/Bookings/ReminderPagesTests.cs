using System.Net;
using CoachOffice.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests.Bookings;

/// <summary>The two pages a reminder leads to: programs that look through mail open every link, so that opening one decides nothing.</summary>
public sealed class ReminderPagesTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;
    private Visitor _ida = null!;
    private string _lesson = "";

    public async ValueTask InitializeAsync()
    {
        _owner = await _office.OpensThePractice();
        await _owner.AddsPlace("Range");
        await _owner.AddsOffering("Private hour", "45,00");
        for (var day = 1; day <= 7; day++) await _owner.AddsHours($"{day}", "08:00", "20:00");
        _ida = await _owner.HandsOutLessons(_office, await _owner.Registers());
        await _ida.BooksALesson();
        _lesson = _ida.Path;
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Opening_a_page_changes_nothing_and_its_one_button_does()
    {
        await _ida.Open($"{_lesson}/coming");
        await _ida.Open($"{_lesson}/cancel");
        Assert.Equal((1, 0), await Standing());

        await _ida.Open($"{_lesson}/coming");
        Assert.Equal("I am coming", Assert.Single(_ida.Page.QuerySelectorAll("main form[method=post] button")).TextContent);
        await _ida.Send("main form[method=post]");
        Assert.Equal((1, 1), await Standing());
        Assert.Contains("knows", _ida.Heading, StringComparison.Ordinal);
        await _owner.Open($"/bookings/{_lesson.Split('/')[^1]}");
        Assert.Contains("said yes", _owner.Text, StringComparison.Ordinal);

        await _ida.Open($"{_lesson}/cancel");
        await _ida.Send("main form[method=post]");
        Assert.Equal((0, 1), await Standing());
        await _ida.Open($"{_lesson}/coming");
        Assert.Empty(_ida.Page.QuerySelectorAll("main form[method=post]"));
    }

    [Fact]
    public async Task A_link_of_a_letter_leads_to_its_page_without_the_token_and_to_nothing_else()
    {
        await _owner.Open($"{await Student()}/lessons-link");
        await _owner.Send("form[action*='Make']");
        var link = new Uri(_owner.Page.QuerySelector("#address")!.GetAttribute("value")!).AbsolutePath;
        var phone = new Visitor(_office);

        await phone.Open($"{link}/coming/{_lesson.Split('/')[^1]}");
        Assert.Equal($"{_lesson}/coming", phone.Path);
        await phone.Open($"{link}/elsewhere/{_lesson.Split('/')[^1]}");
        Assert.Equal("/my-lessons", phone.Path);
    }

    [Fact]
    public async Task Without_the_link_or_with_somebody_elses_there_is_no_such_lesson()
    {
        var stranger = new Visitor(_office);
        var ben = await _owner.HandsOutLessons(_office, await _owner.Registers("Ben"));
        foreach (var page in new[] { "coming", "cancel" })
        {
            await stranger.Open($"{_lesson}/{page}");
            Assert.Equal(HttpStatusCode.NotFound, stranger.Status);
            await ben.Open($"{_lesson}/{page}");
            Assert.Equal(HttpStatusCode.NotFound, ben.Status);
        }
    }

    private async Task<(int Booked, int Yes)> Standing()
    {
        using var scope = _office.Services.CreateScope();
        var seats = await scope.ServiceProvider.GetRequiredService<OfficeDb>().Seats.AsNoTracking().ToListAsync(TestContext.Current.CancellationToken);
        return (seats.Count(s => s.Counts), seats.Count(s => s.ComingAt is not null));
    }

    private async Task<string> Student()
    {
        using var scope = _office.Services.CreateScope();
        return $"/students/{(await scope.ServiceProvider.GetRequiredService<OfficeDb>().Students.SingleAsync(TestContext.Current.CancellationToken)).Id.Value}";
    }
}
