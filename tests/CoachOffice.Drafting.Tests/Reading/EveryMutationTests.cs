using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests.Reading;

/// <summary>One character changed anywhere: in the small book at every place in the full proof, in the shipped files at sampled places. Never an exception, and every fault has a place.</summary>
public sealed class EveryMutationTests
{
    private const int Seed = 271828;

    private static readonly char[] Substitutes = ['x', '9', ':', '-', '[', '"', ' ', '\n'];

    [Fact]
    public void In_the_small_book()
    {
        var chance = new Random(Seed);
        foreach (var (file, text) in SmallBook.Files)
        {
            for (var i = 0; i < text.Length; i++)
            {
                if (!FullProof.IsOn && chance.Next(40) > 0) continue;
                foreach (var changed in Changes(text, i)) Judge(SmallBook.WithFile(file, changed), $"{file} at {i}");
            }
        }
    }

    [Fact]
    public void In_the_shipped_files()
    {
        var chance = new Random(Seed);
        var shipped = HouseBook.Compiled.Loaded.Text.Files.ToList();
        for (var n = 0; n < (FullProof.IsOn ? 3000 : 12); n++)
        {
            var (file, text) = shipped[chance.Next(shipped.Count)];
            var place = chance.Next(text.Length);
            var changed = text.Remove(place, 1).Insert(place, Substitutes[chance.Next(Substitutes.Length)].ToString());
            Judge(RulebookText.Of(shipped.Where(f => f.Key != file).Append(KeyValuePair.Create(file, changed))), $"{file} at {place}");
        }
    }

    private static IEnumerable<string> Changes(string text, int place) =>
        Substitutes.Select(letter => text.Remove(place, 1).Insert(place, letter.ToString())).Append(text.Remove(place, 1));

    private static void Judge(RulebookText text, string where)
    {
        var read = RulebookReader.Load(text);
        Assert.True(read.Succeeded || read.Faults.All(f => f.Line >= 1 && f.Column >= 1 && text.Files.ContainsKey(f.File)), where);
    }
}
