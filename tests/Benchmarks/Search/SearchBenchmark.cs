using System.Diagnostics;
using CoachOffice.Benchmarks.Measuring;
using CoachOffice.Benchmarks.Office;
using CoachOffice.UseCases.Students;

namespace CoachOffice.Benchmarks.Search;

/// <summary>The office's search over 20,000 students against the same SQL written by hand, both in this process on one file.</summary>
internal sealed class SearchBenchmark(OpenOffice office, SearchByHand hand)
{
    private const int Rounds = 15;
    private const int Repeats = 10;

    private static readonly string[] Texts = ["", "a", "so", "céz", "hazelwick", "SØREN", "møl", "ada oak", "student1999", "1632 0123", "zoë ashbury", "100%", "nobody here"];

    public static async Task Run(TextWriter output)
    {
        using var big = await BigOffice.Make();
        await using var office = new OpenOffice(big.Folder);
        using var hand = new SearchByHand(big.File);
        await new SearchBenchmark(office, hand).Compare(output);
    }

    private async Task Compare(TextWriter output)
    {
        await output.WriteLineAsync($"{BigOffice.Students:N0} students, the first page of hits and their number; {Rounds} rounds by turns of {Repeats} searches each; median (least to most).\n");
        var table = new Table("text", "hits", "by hand, ms", "office, ms", "ratio");
        List<double> all = [];
        foreach (var text in Texts)
        {
            var hits = await Check(text);
            List<double> ours = [], byHand = [];
            for (var round = -2; round < Rounds; round++)
            {
                var (mine, other) = (await Time(async () => await Find(text)), await Time(() => Task.FromResult(hand.Find(text))));
                if (round < 0) continue;
                ours.Add(mine);
                byHand.Add(other);
            }

            all.Add(Sample.Ratio(ours, byHand).Median);
            table.Add($"`{text}`", $"{hits}", new Sample(byHand).Text("0.00"), new Sample(ours).Text("0.00"), Sample.Ratio(ours, byHand).Text("0.00"));
        }

        await table.Print(output);
        await output.WriteLineAsync($"Median ratio over the texts: **{new Sample(all).Text("0.00")}**.");
    }

    private Task<StudentList> Find(string text) => office.Do((FindStudents find) => find.Matching(text, 1, archived: false));

    private async Task<int> Check(string text)
    {
        var (mine, other) = (await Find(text), hand.Find(text));
        if (mine.Total != other.Total || !mine.Rows.Select(r => r.Name).SequenceEqual(other.Rows.Select(r => r.Name))) throw new InvalidOperationException($"The two searches for '{text}' differ.");
        return mine.Total;
    }

    private static async Task<double> Time(Func<Task<StudentList>> search)
    {
        var from = Stopwatch.GetTimestamp();
        for (var i = 0; i < Repeats; i++) await search();
        return Stopwatch.GetElapsedTime(from).TotalMilliseconds / Repeats;
    }
}
