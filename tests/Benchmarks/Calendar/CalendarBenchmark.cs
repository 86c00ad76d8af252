using System.Globalization;
using CoachOffice.Benchmarks.Measuring;
using CoachOffice.Benchmarks.Pages;
using CoachOffice.Benchmarks.Programs;
using CoachOffice.UseCases.Bookings;

namespace CoachOffice.Benchmarks.Calendar;

/// <summary>A week of the calendar and a search for free times over four weeks, against the emptiest answer of the same program; and how both grow with the years behind them.</summary>
internal static class CalendarBenchmark
{
    private const int Rounds = 7;
    private const int WarmUps = 120;
    private const int Few = 2_000;
    private const int Many = 200_000;
    private const string Empty = "/icon.svg";

    public static async Task Run(TextWriter output)
    {
        using var small = await BusyOffice.Of(Few);
        using var large = await BusyOffice.Of(Many);
        using var one = await Running.On(small);
        using var other = await Running.On(large);
        List<PageLoad> loads = [.. one.Loads(Few), .. other.Loads(Many)];
        foreach (var load in loads)
        {
            for (var i = 0; i < WarmUps; i++) load.Bytes = await load.Request();
        }

        for (var round = -1; round < Rounds; round++)
        {
            foreach (var load in loads)
            {
                var rate = await Load.Rate(load.Request);
                if (round >= 0) load.Rates.Add(rate);
            }
        }

        await Print(output, loads);
    }

    private static async Task Print(TextWriter output, List<PageLoad> loads)
    {
        await output.WriteLineAsync($"10 coaches, 11 lessons each a day; {Load.Connections} connections, {Rounds} rounds by turns, both offices in the same run; median (least to most). Growth: rate with {Few:N0} over rate with {Many:N0} bookings.\n");
        var half = loads.Count / 2;
        var table = new Table("page", "requests a second", "of the empty route", "growth", "KB");
        for (var n = 0; n < loads.Count; n++)
        {
            var (load, empty) = (loads[n], loads[n < half ? 0 : half]);
            table.Add(load.Name, new Sample(load.Rates).Text("0"), Sample.Ratio(load.Rates, empty.Rates).Text("0.00"), n < half ? "" : Sample.Ratio(loads[n - half].Rates, load.Rates).Text("0.00"), (load.Bytes / 1024.0).ToString("0", CultureInfo.InvariantCulture));
        }

        await table.Print(output);
    }

    /// <summary>The office as a program of its own, with somebody signed in.</summary>
    private sealed class Running : IDisposable
    {
        private readonly RunningProgram _program;
        private readonly SignedIn _person;
        private readonly string _coach;
        private readonly string _form;

        private Running(RunningProgram program, SignedIn person, string coach, string form) => (_program, _person, _coach, _form) = (program, person, coach, form);

        public static async Task<Running> On(BusyOffice office)
        {
            var program = RunningProgram.Office(office.Folder);
            using (var stranger = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false })) await program.FirstPage(stranger, "/health");
            var person = await SignedIn.To(program.Address);
            return new Running(program, person, office.Owner.Account!.Value.Value.ToString(), await person.Page("/bookings/new"));
        }

        public IEnumerable<PageLoad> Loads(int bookings)
        {
            var size = bookings.ToString("N0", CultureInfo.InvariantCulture);
            yield return new($"empty route `{Empty}`, {size}", () => _person.Get(Empty));
            yield return new($"week of one coach, {size}", () => _person.Get($"/calendar?view=week&coach={_coach}"));
            yield return new($"week of ten coaches, {size}", () => _person.Get("/calendar?view=week&coach=all"));
            yield return new($"day of ten coaches, {size}", () => _person.Get("/calendar?view=day&coach=all"));
            yield return new($"free times of one coach over {FreeTimesQuestion.MostDays / 7 - 1} weeks, {size}", () => Times(anybody: false));
            yield return new($"free times of ten coaches over {FreeTimesQuestion.MostDays / 7 - 1} weeks, {size}", () => Times(anybody: true));
        }

        public void Dispose()
        {
            _person.Dispose();
            _program.Dispose();
        }

        private Task<int> Times(bool anybody) =>
            _person.Submit($"/bookings/new?handler=times{(anybody ? "&anybody=true" : "")}", _form, ("OfferingId", BusyOffice.Hour.Value.ToString()), ("Input.CoachId", _coach));
    }
}
