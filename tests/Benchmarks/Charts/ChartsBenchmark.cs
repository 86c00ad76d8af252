using System.Diagnostics;
using System.Globalization;
using CoachOffice.Benchmarks.Measuring;
using CoachOffice.Benchmarks.Office;
using CoachOffice.Benchmarks.Pages;
using CoachOffice.Benchmarks.Programs;
using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Lessons;
using CoachOffice.Web.Features.Students.Charts;
using CoachOffice.Web.Shell.Wording;
using OxyPlot;

namespace CoachOffice.Benchmarks.Charts;

/// <summary>One measure's drawing from the running office against the bare export of the same plot.</summary>
internal static class ChartsBenchmark
{
    private const int Rounds = 15;
    private const int Repeats = 40;

    /// <summary>Until the just-in-time compiler has done its best on both sides.</summary>
    private const int WarmUps = 1500;

    private const int Lessons = 52;

    public static async Task Run(TextWriter output)
    {
        using var big = await BigOffice.Make();
        var history = await Longest(big);
        var address = $"/students/{big.Student.Student.Value}/measures/{history.Measure.Id.Value}/{Terms.Of(history.Club)}?handler=drawing";
        var plot = new ChartDrawing(history, UnitText.Metric, isSmall: false).Plot();
        using var program = RunningProgram.Office(big.Folder);
        using (var stranger = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false })) await program.FirstPage(stranger, "/health");
        using var person = await SignedIn.To(program.Address);
        var tag = await person.Tag(address);
        for (var i = 0; i < WarmUps; i++)
        {
            Export(plot);
            await person.Get(address);
        }

        List<double> bare = [], ours = [], held = [];
        for (var round = -3; round < Rounds; round++)
        {
            var (export, office, again) = (await Time(() => Task.FromResult(Export(plot))), await Time(() => person.Get(address)), await Time(() => person.Holds(address, tag)));
            if (round < 0) continue;
            bare.Add(export);
            ours.Add(office);
            held.Add(again);
        }

        await output.WriteLineAsync($"{history.Points.Count} values of {history.Measure.Name}, 760 by 380; {Rounds} rounds by turns of {Repeats}, one after the other; median (least to most).\n");
        var table = new Table("what", "ms", "of the bare export");
        table.Add("bare export of the plot", new Sample(bare).Text("0.00"), "1");
        table.Add("drawing from the office", new Sample(ours).Text("0.00"), Sample.Ratio(ours, bare).Text("0.00"));
        table.Add("told that it is the same (304)", new Sample(held).Text("0.00"), Sample.Ratio(held, bare).Text("0.00"));
        await table.Print(output);
    }

    /// <summary>A measure a plan works on, read every second week for two years.</summary>
    private static async Task<MeasureHistory> Longest(BigOffice big)
    {
        await using var office = new OpenOffice(big.Folder);
        var first = (await office.Do((ReadMeasureHistory read) => read.Of(big.Student.Student)))!.Measures[0];
        var today = await office.Do((PracticeClock clock) => clock.Today());
        for (var lesson = 1; lesson <= Lessons; lesson++)
        {
            var heading = new LessonHeading(today.PlusDays(-14 * lesson), first.Club);
            var id = await office.Must((StartLesson start) => start.For(big.Student.Student, heading, big.Owner));
            var value = (first.Points[0].Value + (lesson % 5)).ToString(CultureInfo.InvariantCulture);
            await office.Must((SaveLesson save) => save.As(id, 1, new LessonForm { Heading = heading, Entries = [new MeasureEntry { Measure = first.Measure.Id.Value, Text = $"{value} {value}" }] }, big.Owner));
        }

        return (await office.Do((ReadMeasureHistory read) => read.Of(big.Student.Student)))!.Measures.Single(m => m.Measure.Id == first.Measure.Id && m.Club == first.Club);
    }

    private static int Export(PlotModel plot) => ChartDrawing.Exporter(isSmall: false).ExportToString(plot).Length;

    private static async Task<double> Time(Func<Task<int>> act)
    {
        var from = Stopwatch.GetTimestamp();
        for (var i = 0; i < Repeats; i++) await act();
        return Stopwatch.GetElapsedTime(from).TotalMilliseconds / Repeats;
    }
}
