using System.Globalization;
using CoachOffice.Benchmarks.Measuring;
using CoachOffice.UseCases.Rulebook;

namespace CoachOffice.Benchmarks.Replay;

/// <summary>What an edited rulebook would change over a practice's past: the cut-offs against drafting all of it, what reading costs, two threads, memory.</summary>
internal sealed class ReplayBenchmark(PastOffice big, PastOffice small, TextWriter output)
{
    private const string SizeSwitch = "COACHOFFICE_REPLAY_STUDENTS";
    private const int Students = 20_000;
    private const int StudentsWhereAllIsDrafted = 200;
    private const int MostInFull = 2_400;
    private const int Rounds = 5;
    private const int Threads = 2;

    private readonly WholePast _big = new(big.Office, big.Book);
    private readonly WholePast _small = new(small.Office, small.Book);

    public static async Task Run(TextWriter output)
    {
        var students = int.TryParse(Environment.GetEnvironmentVariable(SizeSwitch), CultureInfo.InvariantCulture, out var given) ? given : Students;
        await using var big = await PastOffice.Of(students);
        await using var small = await PastOffice.Of(StudentsWhereAllIsDrafted);
        await output.WriteLineAsync($"{students:N0} students, {big.Lessons:N0} lessons of 6 to 40 readings, all readings kept; {Rounds} rounds by turns after one to warm up, {Threads} threads; median (least to most). Load average before: {LoadAverage.Now}.\n");
        var benchmark = new ReplayBenchmark(big, small, output);
        await benchmark.Early();
        await benchmark.Cost();
        await benchmark.OneThreadAgainstTwo();
        await benchmark.Memory();
        await output.WriteLineAsync($"Load average after: {LoadAverage.Now}.");
    }

    private async Task Early()
    {
        var (range, edited) = new SomeEdits(big.Book).OneRange(big.Facts, share: 0.02);
        var spread = await _big.Spread(MostInFull);
        ReplayCounts counts = null!;
        var cut = new Lap("with the cut-offs", async () => counts = (await _big.AsTheOfficeDoes(edited, Threads)).Counts());
        var differ = 0;
        var full = new Lap("all lessons in full", async () => differ = await _big.InFull(edited, spread, Threads), (double)big.Lessons / spread.Count);
        await Lap.ByTurns(Rounds, cut, full);
        await output.WriteLineAsync($"One range a step wider ({range.Measure}, {range.Club}): {counts.Reached:N0} of {counts.Lessons:N0} lessons reached ({100.0 * counts.Reached / counts.Lessons:0.0} %), {counts.SameFindings:N0} only graded, {counts.NotInTheWork:N0} drafted once, {counts.SameWork + counts.Differ:N0} drafted twice, {counts.Differ:N0} differ. In full means read, drafted by both books and compared: {spread.Count:N0} lessons evenly over all (of which {differ:N0} differ), scaled to all.\n");
        await Lap.Print(output, cut, full);
        await output.WriteLineAsync($"Faster by {cut.Times(full)}; wanted at least 20.\n");
    }

    private async Task Cost()
    {
        var edited = new SomeEdits(small.Book).Amounts();
        var lessons = await _small.Spread(MostInFull);
        var facts = await _small.Facts(lessons);
        var drafting = new Lap("drafted by both books, from memory", () => _small.OnlyDrafting(edited, facts, Threads));
        var full = new Lap("read, drafted by both books, compared", () => _small.InFull(edited, lessons, Threads));
        var office = new Lap("as the office does: also searched, graded and counted", () => _small.AsTheOfficeDoes(edited, Threads));
        await Lap.ByTurns(Rounds, drafting, full, office);
        await output.WriteLineAsync($"An edit of amounts, {lessons.Count:N0} lessons, every one drafted by both books.\n");
        await Lap.Print(output, drafting, full, office);
        await output.WriteLineAsync($"Read and compared, times drafting alone: {drafting.Times(full)}; as the office does: {drafting.Times(office)}; wanted at most 1.5.\n");
    }

    private async Task OneThreadAgainstTwo()
    {
        var edited = new SomeEdits(small.Book).Amounts();
        var one = new Lap("one thread", () => _small.AsTheOfficeDoes(edited, 1));
        var two = new Lap("two threads", () => _small.AsTheOfficeDoes(edited, 2));
        await Lap.ByTurns(Rounds, one, two);
        await Lap.Print(output, one, two);
        await output.WriteLineAsync($"Faster on two threads by {two.Times(one)}; wanted 1.6 by the clock.\n");
    }

    private async Task Memory()
    {
        var edited = new SomeEdits(big.Book).ChildrensCaution();
        var (watch, before) = (new MemoryWatch(big.Lessons), MemoryWatch.Held());
        var tally = await _big.AsTheOfficeDoes(edited, Threads, watch.Beside);
        var (after, counts) = (MemoryWatch.Held(), tally.Counts());
        GC.KeepAlive(tally);
        await output.WriteLineAsync($"A caution for children reworded: {counts.Followed:N0} lessons read and looked at, {counts.Differ:N0} differ. Most memory in each quarter of the lessons, looked at every 50 ms:\n");
        var table = new Table("MB", "before", "1st", "2nd", "3rd", "4th", "after");
        table.Add(["managed heap (before and after: held after a full collection)", Text(before), .. watch.Heap.Select(Text), Text(after)]);
        table.Add(["resident", "", .. watch.Resident.Select(Text), ""]);
        await table.Print(output);
    }

    private static string Text(double number) => number.ToString("0.0", CultureInfo.InvariantCulture);
}
