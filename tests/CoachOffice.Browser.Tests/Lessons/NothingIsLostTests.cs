using System.Net;
using System.Net.Sockets;
using CoachOffice.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using PuppeteerSharp;

namespace CoachOffice.Browser.Tests.Lessons;

/// <summary>The connection is cut, the office stops and starts, the tab is closed, the button is pressed twice: every value arrives, and once.</summary>
public sealed class NothingIsLostTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task Without_a_connection_one_goes_on_reading_and_it_is_sent_once_when_it_is_back()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        var lesson = await coach.Begins();
        await coach.Page.SetOfflineModeAsync(true);

        await coach.TypesTilt("14");
        await coach.Hears("graded on this device");
        await coach.Taps("Another swing");
        await coach.TypesTilt("15");
        await coach.Taps("Save");
        await coach.Hears("goes out by itself");
        await window.LookAt("tee-no-connection");
        await coach.TypesTilt("16");
        await coach.Page.SetOfflineModeAsync(false);

        await coach.Hears("The lesson is saved.");
        Assert.Equal("14 16", await coach.Whole());
        Assert.Equal(1, await Saves(office));
        Assert.Equal(lesson, coach.Path);
        await coach.Page.WaitForFunctionAsync("() => localStorage.length === 0");
    }

    [Fact]
    public async Task A_stopped_office_takes_the_values_when_it_runs_again()
    {
        var folder = Directory.CreateTempSubdirectory("coachoffice-browser-");
        var port = FreePort();
        await using var window = await chromium.Open();
        var first = RunningOffice.At(folder, port, isLast: false);
        var coach = new Person(window, first.Url);
        await coach.Begins();
        await coach.TypesTilt("14");
        await first.DisposeAsync();

        await coach.Taps("Save");
        await coach.Hears("goes out by itself");
        await using var second = RunningOffice.At(folder, port, isLast: true);
        _ = second.Url;

        await coach.Hears("The lesson is saved.");
        Assert.Equal(("14", 1), (await coach.Whole(), await Saves(second)));
    }

    [Fact]
    public async Task A_closed_tab_loses_nothing_and_every_page_says_what_is_kept()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        var lesson = await coach.Begins();
        await coach.TypesTilt("14");
        await coach.Taps("Another swing");
        await coach.TypesTilt("15");

        await coach.GoTo("/students");
        await coach.Hears("were not saved: a lesson");
        await window.LookAt("kept-elsewhere");
        await coach.Press("a lesson");
        Assert.Equal((lesson, ""), (coach.Path, await coach.Whole()));
        await coach.Taps("Put them back");

        Assert.Equal(("14 15", "14"), (await coach.Whole(), await coach.Shown()));
        await coach.Press("Save");
        Assert.Equal(("14 15", 1), (await coach.Whole(), await Saves(office)));
    }

    /// <summary>Another sheet is fetched with what was typed, and saves nothing: until it is saved the device must keep it, whatever page is opened next.</summary>
    [Fact]
    public async Task Another_sheet_saves_nothing_so_the_device_goes_on_keeping()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        await coach.Begins();
        await coach.TypesTilt("14");
        await coach.Page.SelectAsync("#SheetKey", "first-look");
        await coach.Page.WaitForFunctionAsync("() => document.querySelectorAll('[data-reading]').length < 20");

        await coach.GoTo("/plans/00000000-0000-0000-0000-000000000001");

        Assert.Equal((1, 0), (await coach.KeptHere(), await Saves(office)));
        await coach.GoTo("/students");
        await coach.Hears("were not saved: a lesson");
    }

    [Fact]
    public async Task Pressed_twice_is_saved_once()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        await coach.Begins();
        await coach.TypesTilt("14");

        await coach.Page.EvaluateExpressionAsync("{ const b = [...document.querySelectorAll('button')].find(b => b.textContent.trim() === 'Save'); b.click(); b.click(); b.click(); }");

        await coach.Hears("The lesson is saved.");
        Assert.Equal(1, await Saves(office));
    }

    [Fact]
    public async Task Signed_out_in_another_tab_the_values_stay_here_and_signing_out_here_clears_them()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        var lesson = await coach.Begins();
        await coach.TypesTilt("14");
        var cookies = await coach.Page.GetCookiesAsync();
        await coach.Page.DeleteCookieAsync(cookies);

        await coach.Taps("Save");
        await coach.Hears("Everything is still kept on this device");
        await coach.Page.SetCookieAsync([.. cookies.Select(c => new CookieParam { Name = c.Name, Value = c.Value, Url = office.Url, HttpOnly = c.HttpOnly })]);
        Assert.Equal(1, await coach.KeptHere());
        await coach.GoTo(lesson);
        await coach.Taps("Put them back");
        Assert.Equal("14", await coach.Whole());

        await coach.Page.EvaluateExpressionAsync("document.querySelector('.account').open = true");
        await coach.Press("Sign out");

        Assert.Equal((0, 0), (await coach.KeptHere(), await Saves(office)));
    }

    [Fact]
    public async Task Somebody_elses_save_meanwhile_shows_both_and_asks()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        var lesson = await coach.Begins();
        await coach.TypesTilt("14");
        await coach.Page.SetOfflineModeAsync(true);
        await coach.Taps("Save");
        await coach.Hears("goes out by itself");
        await office.Tilts(lesson, 20);
        await coach.Page.SetOfflineModeAsync(false);

        await coach.Hears("Saved meanwhile: 20");

        Assert.Equal("14", await coach.Whole());
        await window.LookAt("tee-both-values");
        await coach.Press("Save");
        Assert.Equal("14", await coach.Whole());
    }

    [Fact]
    public async Task A_page_opened_without_the_office_says_so_and_no_students_page_is_ever_cached()
    {
        var office = RunningOffice.At(Directory.CreateTempSubdirectory("coachoffice-browser-"), FreePort(), isLast: true);
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        var lesson = await coach.Begins();
        await coach.TypesTilt("14");
        await coach.Page.EvaluateExpressionAsync("navigator.serviceWorker.ready.then(() => true)");
        await coach.GoTo("/students");
        await coach.GoTo(lesson);

        var cached = await coach.Page.EvaluateExpressionAsync<string[]>("caches.keys().then(async names => (await Promise.all(names.map(async n => (await (await caches.open(n)).keys()).map(r => new URL(r.url).pathname)))).flat())");
        Assert.Equal(["/away.html", "/css/base.css", "/css/layout.css", "/css/parts.css", "/css/tokens.css", "/js/away.js", "/js/keep.js"], cached.Order(StringComparer.Ordinal));
        await office.DisposeAsync();
        await coach.GoTo(lesson);
        await coach.Hears("The office cannot be reached");
        await coach.Hears("What you typed for one lesson is kept on this device");
        Assert.DoesNotContain("Oluwaseun", await coach.Text(), StringComparison.Ordinal);
        await window.LookAt("away");
    }

    private static async Task<int> Saves(RunningOffice office)
    {
        await using var scope = office.Services.CreateAsyncScope();
        return await scope.ServiceProvider.GetRequiredService<OfficeDb>().AuditEntries.CountAsync(a => a.Action == "lesson-saved");
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
