using System.Collections.Concurrent;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Tests.Replay;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Properties;

/// <summary>What ties a draft to the rulebook it was made by.</summary>
public sealed class BookProperties
{
    private static readonly ConcurrentDictionary<(PatternId, int), CompiledRulebook> Edited = new();

    [Fact]
    public void Every_name_in_a_draft_is_in_the_rulebook() => Drafted.Always((_, draft) =>
    {
        Assert.All(draft.Findings.Select(f => f.Measure).Concat(draft.MeasureNext.Select(n => n.Measure)).Concat(draft.Strengths), m => Assert.NotNull(HouseBook.Book.Find(MeasureId.From(m))));
        Assert.All(draft.Causes.Select(c => c.Pattern).Concat(draft.Focus.Select(f => f.Pattern).OfType<string>()).Concat(draft.Fired()).Concat(draft.Rules("near-miss:")), p => Assert.NotNull(HouseBook.Book.Find(PatternId.From(p))));
        Assert.All(draft.Stages.SelectMany(s => s.Drills).Select(d => d.Drill).Concat(draft.Withheld.Select(w => w.Drill)), d => Assert.NotNull(HouseBook.Book.Find(DrillId.From(d))));
        Assert.All(draft.Cautions, c => Assert.Contains(HouseBook.Book.Cautions, known => known.Id.Value == c.Id));
    });

    [Fact]
    public void Every_cause_and_every_focus_shows_in_a_firing_with_its_root() => Drafted.Always((_, draft) =>
    {
        foreach (var (pattern, root) in draft.Causes.Select(c => (c.Pattern, c.Root)).Concat(draft.Focus.Where(f => f.Pattern is not null).Select(f => (f.Pattern!, f.Fault))))
        {
            var firing = Assert.Single(draft.Trace, t => t.Rule == $"pattern:{pattern}");
            Assert.Contains(firing.Facts, fact => fact.Split(' ')[0] == root.ToString());
        }
    });

    [Fact]
    public void Editing_one_pattern_changes_only_drafts_that_speak_of_it()
    {
        var (same, different) = (0, 0);
        Gen.Select(RandomLessons.One, Gen.OneOf(HouseBook.Book.Patterns.ToArray()), Gen.Int[0, 3]).Sample((facts, pattern, edit) =>
        {
            var book = Edited.GetOrAdd((pattern.Id, edit), _ => HouseBook.Book.With(patterns: HouseBook.Book.Patterns.Select(p => p.Id == pattern.Id ? Edit(p, edit) : p)).Compiled());
            var (before, after) = (Drafted.Of(facts), Drafted.By(book, facts));
            if (Speaks(before, pattern) || Speaks(after, pattern))
            {
                if (Text(before) != Text(after)) Interlocked.Increment(ref different);
                return;
            }

            Assert.Equal(Text(before), Text(after));
            Interlocked.Increment(ref same);
        }, iter: Drafted.Lessons);
        Drafted.Enough(same, 10);
        Drafted.Enough(different, Drafted.Lessons);
    }

    [Fact]
    public void Comments_and_the_order_of_entries_and_files_change_neither_hash_nor_draft()
    {
        var text = HouseBook.Compiled.Loaded.Text;
        Gen.Select(RandomLessons.One, Gen.Int).Sample((facts, seed) =>
        {
            var other = RulebookReader.Load(RulebookText.Of(Rearranged(text, new Random(seed)))).Value;
            Assert.Equal(HouseBook.Compiled.Sha256, other.Sha256);
            Assert.Equal(DraftJson.Text(Drafted.Of(facts)), DraftJson.Text(Drafted.By(CompiledRulebook.Compile(other), facts)));
        }, iter: FullProof.IsOn ? 100 : FullProof.IsShort ? 1 : 10);
    }

    private static Pattern Edit(Pattern pattern, int edit) => edit switch
    {
        0 => pattern with { Because = pattern.Because + " Again.", Precedence = pattern.Precedence + 1 },
        1 => pattern with { Explains = [], ExplainsIfPresent = [], Over = [], Forbids = [] },
        2 => pattern with { When = [.. pattern.When, .. pattern.When.Take(1).Select(_ => new StateCondition(HouseBook.Book.Measures[0].Id, MeasureState.Measured))] },
        _ => pattern with { Unless = [], Needs = [] },
    };

    private static bool Speaks(Draft draft, Pattern pattern) => draft.Fired().Concat(draft.Rules("near-miss:")).Contains(pattern.Id.Value);

    private static string Text(Draft draft) => DraftJson.Text(draft with { Rulebook = new DraftRulebook("", "") });

    /// <summary>Every file under another name, with a comment ahead and its entries in another order. Measures keep theirs: their files say it in numbers.</summary>
    private static IEnumerable<KeyValuePair<string, string>> Rearranged(RulebookText text, Random chance) =>
        text.Files.Select((file, i) => KeyValuePair.Create($"{chance.Next(10_000):0000}-{i}.yaml", "# set down again\n" + Shuffled(file.Value, chance)));

    private static string Shuffled(string file, Random chance)
    {
        var parts = file.Split("\n  - id: ");
        return parts.Length < 2 || parts[0].Contains("measures:", StringComparison.Ordinal) || parts.Any(p => p.Split('\n').Skip(1).Any(line => line.Length > 0 && char.IsLetter(line[0])))
            ? file
            : string.Join("\n  - id: ", [parts[0], .. chance.Shuffled(parts[1..]).Select(p => p.TrimEnd())]) + "\n";
    }
}
