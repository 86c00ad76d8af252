using System.Diagnostics;
using System.Globalization;
using CoachOffice.Benchmarks.Measuring;
using CoachOffice.Benchmarks.Office;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Reading;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Rulebook;

namespace CoachOffice.Benchmarks.Saving;

/// <summary>From a saved edit to the new edition serving, at a hundred patterns, against compiling them alone; drafts go on meanwhile on another thread.</summary>
internal sealed class SavingBenchmark(OpenOffice office, FirstPeople people, TextWriter output)
{
    private const int Rounds = 12;
    private const int WarmUp = 2;
    private const string Pressed = "from pressing save to serving: what the page tried is stored as the next edition";
    private const string Milliseconds = "0.0";

    private static readonly EntryId Edited = new(EntryKind.Range, "tempo-ratio");

    private readonly Dictionary<string, List<double>> _times = [];

    public static async Task Run(TextWriter output)
    {
        var folder = Directory.CreateTempSubdirectory("coachoffice-saving-");
        try
        {
            var rules = Path.Combine(folder.FullName, "rules");
            foreach (var (path, content) in HundredPatterns.Of(RulebookText.FromDirectory(Path.Combine(Checkout.Root, "rules")).Value).Files) Write(Path.Combine(rules, path), content);
            await using var office = new OpenOffice(Path.Combine(folder.FullName, "data"), new ShippedRules(rules));
            var people = new FirstPeople(office);
            await people.Open();
            await new SavingBenchmark(office, people, output).Saves();
        }
        finally
        {
            folder.Delete(true);
        }
    }

    private static void Write(string path, string content)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, content);
    }

    private async Task Saves()
    {
        var load = LoadAverage.Now;
        var served = await people.Serve("Hester", approve: false);
        for (var round = 0; round < Rounds + WarmUp; round++)
        {
            if (round == WarmUp) _times.Clear();
            await Save(round, "");
        }

        using var done = new CancellationTokenSource();
        var drafting = Task.Run(() => DraftOn(served, done.Token));
        for (var round = 0; round < Rounds; round++) await Save(Rounds + WarmUp + round, "; while plans are stored without a pause");

        await done.CancelAsync();
        var drafts = await drafting;
        await Print(load, drafts);
    }

    private async Task Save(int round, string beside)
    {
        var before = await office.Do((Rulebooks books) => books.InForce());
        Timed($"compiling the patterns alone{beside}", () => PatternNetwork.Compile(before.Book));
        if (beside.Length == 0) Parts(before.Loaded.Text);
        var text = (await office.Must((OpenEntry open) => open.Of(Edited, people.Owner))).InForce!;
        var old = text.Split('\n').First(line => line.StartsWith("driver:", StringComparison.Ordinal));
        var edit = new EntryEdit(Edited, EntryDeed.Write, text.Replace(old, string.Create(CultureInfo.InvariantCulture, $"driver: {{ range: [2.4, 3.6], aim: [2.8, {2.9 + (round * 0.01):0.00}] }}"), StringComparison.Ordinal));
        await Awaited($"a change kept: tried with all that it reaches, and stored{beside}", () => office.Must((KeepChange keep) => keep.Of(new WorkForm(1 + round, [edit]), people.Owner)));
        await Awaited($"the page of all changes, from which they are saved (up to thousands of students drafted){beside}", () => office.Must((ReadWork read) => read.Of(people.Owner)));
        var from = Stopwatch.GetTimestamp();
        var saved = await office.Must((PutInForce rules) => rules.By("timed", people.Owner));
        var kept = Stopwatch.GetTimestamp();
        var serving = await office.Do((Rulebooks books) => books.InForce());
        if (serving.Sha256 != saved.Sha256) throw new InvalidOperationException("Another book serves.");
        Add($"**from kept to serving: what the first draft by the new edition waits for{beside}**", Stopwatch.GetElapsedTime(kept).TotalMilliseconds);
        Add($"**{Pressed}{beside}**", Stopwatch.GetElapsedTime(from).TotalMilliseconds);
    }

    /// <summary>What trying an edit is made of, from the beginning and again.</summary>
    private void Parts(RulebookText text)
    {
        var loaded = Timed("- reading all rules", () => RulebookReader.Load(text).Value);
        var compiled = CompiledRulebook.Compile(loaded);
        var answers = new KnownAnswers();
        Timed("- all worked cases by a book newly compiled", () => CaseRun.Failures(compiled));
        Timed("- all checks of the rules as a whole", () => RuleBaseCheck.AtOnce(compiled, answers));
        Again(text, compiled, answers);
        var again = RulebookReader.Load(text).Value;
        Timed("- what changed, entry by entry", () => BookChanges.Between(loaded, again));
    }

    /// <summary>The same where a book much like it was read, compiled and checked before.</summary>
    private void Again(RulebookText text, CompiledRulebook before, KnownAnswers answers)
    {
        var files = new FilesRead();
        RulebookReader.Load(text, files);
        var loaded = Timed("- reading, the shipped files known", () => RulebookReader.Load(text, files).Value);
        var compiled = Timed("- compiling, the tests known", () => CompiledRulebook.Compile(loaded, before));
        Timed("- all worked cases by it", () => CaseRun.Failures(compiled));
        Timed("- all checks, the answers known", () => RuleBaseCheck.AtOnce(compiled, new KnownAnswers(answers)));
    }

    private async Task Awaited<T>(string what, Func<Task<T>> act)
    {
        var from = Stopwatch.GetTimestamp();
        await act();
        Add(what, Stopwatch.GetElapsedTime(from).TotalMilliseconds);
    }

    private T Timed<T>(string what, Func<T> act)
    {
        var from = Stopwatch.GetTimestamp();
        var result = act();
        Add(what, Stopwatch.GetElapsedTime(from).TotalMilliseconds);
        return result;
    }

    private void Add(string what, double milliseconds)
    {
        if (!_times.TryGetValue(what, out var times)) _times.Add(what, times = []);
        times.Add(milliseconds);
    }

    /// <summary>Drafts the same lesson again and again; a draft that fails ends the benchmark.</summary>
    private async Task<List<double>> DraftOn(Served served, CancellationToken done)
    {
        var times = new List<double>();
        while (!done.IsCancellationRequested)
        {
            var from = Stopwatch.GetTimestamp();
            await office.Must((DraftPlan draft) => draft.For(served.Lesson, people.Owner, CancellationToken.None));
            times.Add(Stopwatch.GetElapsedTime(from).TotalMilliseconds);
        }

        return times;
    }

    private List<double> Bare(string what) => _times[$"compiling the patterns alone{(what.IndexOf(';', StringComparison.Ordinal) is >= 0 and var at ? what[at..].Trim('*') : "")}"];

    private async Task Print(string load, List<double> drafts)
    {
        await output.WriteLineAsync($"A hundred patterns (the shipped ones and generated ones that pass every check, each with its cases), {Rounds} saves of one changed range after {WarmUp} to warm up, then as many while another thread drafts and stores plans without a pause. Milliseconds, median (least to most). Load average before: {load}.\n");
        var table = new Table("", "milliseconds");
        foreach (var (what, times) in _times) table.Add(what, new Sample(times).Text(Milliseconds));
        await table.Print(output);
        foreach (var (what, times) in _times.Where(t => t.Key.StartsWith("**", StringComparison.Ordinal)))
            await output.WriteLineAsync($"- {what.Trim('*')}: {Sample.Ratio(times, Bare(what)).Text("0.00")} times compiling alone, wanted at most 3.");
        await output.WriteLineAsync($"- {drafts.Count} plans drafted and stored meanwhile, none failed; {new Sample(drafts).Text(Milliseconds)} ms each.\n\nLoad average after: {LoadAverage.Now}.");
    }
}
