using System.Globalization;
using CoachOffice.Benchmarks.Measuring;
using CoachOffice.Benchmarks.Office;
using CoachOffice.Benchmarks.Programs;

namespace CoachOffice.Benchmarks.Pages;

/// <summary>Requests a second of the pages of a large practice against the emptiest answer the same running program has.</summary>
internal static class PagesBenchmark
{
    private const int Rounds = 7;
    private const int WarmUps = 200;

    /// <summary>A file of 227 bytes: the whole pipeline, sign-in included, and nothing of the practice.</summary>
    private const string Empty = "/icon.svg";

    private const string Health = "/health";

    /// <summary>Name of one page, to look into it alone.</summary>
    private const string OnlySwitch = "COACHOFFICE_ONLY_PAGE";

    public static async Task Run(TextWriter output)
    {
        using var big = await BigOffice.Make();
        using var program = RunningProgram.Office(big.Folder);
        using (var stranger = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false })) await program.FirstPage(stranger, Health);
        using var person = await SignedIn.To(program.Address);
        var form = await person.Page("/students");
        List<PageLoad> pages =
        [
            new($"empty route `{Empty}`", () => person.Get(Empty)),
            new($"`{Health}` (asks the database)", () => person.Get(Health)),
            new("a page without data", () => person.Get("/signed-out")),
            new("Today", () => person.Get("/")),
            new("Students, the list", () => person.Get("/students")),
            new("Students, a search", () => person.Search(form, "hazel")),
            new("Student", () => person.Get($"/students/{big.Student.Student.Value}")),
            new("Lesson", () => person.Get($"/lessons/{big.Student.Lesson.Value}")),
            new("Lesson, by a reading sheet of twelve", () => person.Get($"/lessons/{big.Student.Lesson.Value}?sheet=first-look")),
            new("Draft", () => person.Get($"/plans/{big.Drafted.Plan.Value}")),
            new("Plan", () => person.Get($"/plans/{big.Student.Plan.Value}")),
        ];
        if (Environment.GetEnvironmentVariable(OnlySwitch) is { Length: > 0 } only) pages.RemoveAll(p => p != pages[0] && p.Name != only);
        await Measure(pages);
        await Print(output, pages);
    }

    private static async Task Measure(List<PageLoad> pages)
    {
        foreach (var page in pages) await WarmUp(page);
        for (var round = -1; round < Rounds; round++)
        {
            foreach (var page in pages)
            {
                var rate = await Load.Rate(page.Request);
                if (round >= 0) page.Rates.Add(rate);
            }
        }
    }

    /// <summary>Until the just-in-time compiler has done its best: a page of a running office, not of one just started.</summary>
    private static async Task WarmUp(PageLoad page)
    {
        for (var i = 0; i < WarmUps; i++) page.Bytes = await page.Request();
    }

    private static async Task Print(TextWriter output, List<PageLoad> pages)
    {
        await output.WriteLineAsync($"{BigOffice.Students:N0} students, {BigOffice.Lessons:N0} lessons with {BigOffice.ReadingsEach} readings each, {BigOffice.Plans:N0} plans; {Load.Connections} connections, {Rounds} rounds by turns; load and program share the machine; median (least to most).\n");
        var table = new Table("page", "requests a second", "of the empty route", "KB");
        foreach (var page in pages)
            table.Add(page.Name, new Sample(page.Rates).Text("0"), Sample.Ratio(page.Rates, pages[0].Rates).Text("0.00"), (page.Bytes / 1024.0).ToString("0", CultureInfo.InvariantCulture));
        await table.Print(output);
    }
}
