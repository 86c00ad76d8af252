using System.Globalization;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Reading.Lessons;

namespace CoachOffice.Drafting.Tests.Golden;

/// <summary>Whatever the order of the readings and the language of the machine, a draft is the kept bytes. As the bytes are kept in files, each run is a process of its own in the proof.</summary>
public sealed class PermutationTests
{
    private const int Seed = 4711;

    private static int Permutations => FullProof.IsOn ? 1000 : 100;

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_bytes_are_the_kept_ones(string culture)
    {
        var before = Thread.CurrentThread.CurrentCulture;
        Thread.CurrentThread.CurrentCulture = Spoken(culture);
        try
        {
            var chance = new Random(Seed);
            var names = GoldenTable.Why.Keys.ToList();
            for (var i = 0; i < Permutations; i++) Compare(names[i % names.Count], chance);
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }

    private static void Compare(string name, Random chance)
    {
        var facts = LessonReader.FromFile(GoldenTests.At($"lessons/{name}.json"), GoldenTests.Kept.Value.Book).Value;
        var readings = facts.Readings.ToArray();
        chance.Shuffle(readings);
        var draft = DraftJson.Text(Drafter.Draft(GoldenTests.Kept.Value, facts with { Readings = readings }));
        FirstDifference.MustBeNone(File.ReadAllText(GoldenTests.At($"expected/{name}.json")), draft);
    }

    // Where the machine has no data of languages, the comma is put in by hand, so that the test can fail.
    private static CultureInfo Spoken(string name)
    {
        var culture = (CultureInfo)CultureInfo.GetCultureInfo(name).Clone();
        if (name.Length > 0) culture.NumberFormat.NumberDecimalSeparator = ",";
        if (name.Length > 0) culture.NumberFormat.NegativeSign = "\u2212";
        return culture;
    }
}
