using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Replay;
using CoachOffice.Drafting.Tests.Properties;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Replay;

/// <summary>What the cut-offs leave out never differs: they always agree with drafting every lesson by both books.</summary>
public sealed class LessonReplayTests
{
    private const int LessonsAnEdit = 40;

    private static int Edits => FullProof.IsOn ? 120 : 40;

    [Fact]
    public void Whatever_is_edited_the_cut_offs_agree_with_drafting_everything() =>
        Gen.Select(Gen.Int, RandomLessons.One.Array[LessonsAnEdit]).Sample((seed, lessons) =>
        {
            var (name, replay) = Edited(seed);
            Assert.All(lessons, lesson => Agrees(name, replay, lesson));
        }, iter: Edits);

    [Fact]
    public void The_sample_sees_every_cut_off_and_every_section_differ()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        Gen.Select(Gen.Int, RandomLessons.One.Array[LessonsAnEdit]).Sample(
            (seed, lessons) =>
            {
                var (_, replay) = Edited(seed);
                foreach (var result in lessons.Select(replay.Of))
                {
                    seen.Add($"{result.CutOff}");
                    if (result.IsGradedElse) seen.Add($"graded else, {result.CutOff}");
                    seen.UnionWith(result.Difference?.Sections.Select(s => $"{s}") ?? []);
                }
            },
            iter: 60,
            threads: 1);
        string[] wanted = ["SameFindings", "NotInTheWork", "SameWork", "Differs", "graded else, Differs", "graded else, SameWork", .. Enum.GetNames<DraftSection>()];
        Assert.Empty(wanted.Except(seen));
    }

    private static (string Name, LessonReplay Replay) Edited(int seed)
    {
        var chance = new Random(seed);
        var (name, book) = new RandomEdits(chance).Of(HouseBook.Book);

        // Undoing an edit is an edit too, and brings in what no shipped book leaves out.
        return chance.Heads()
            ? (name, LessonReplay.Between(HouseBook.Compiled, book.Compiled()))
            : ($"undo {name}", LessonReplay.Between(book.Compiled(), HouseBook.Compiled));
    }

    private static void Agrees(string name, LessonReplay replay, LessonFacts lesson)
    {
        var (full, cut) = (replay.InFull(lesson), replay.Of(lesson));
        Assert.True(full.Difference is null == cut.Difference is null, $"{name}: {cut.CutOff}, yet drafted in full {string.Join(", ", full.Difference?.Sections ?? [])} differ");
        Assert.Equal(full.Difference?.Sections, cut.Difference?.Sections);
        if (full.Difference is not null) Assert.True(replay.Reach.Holds(lesson), $"{name}: not reached, yet {string.Join(", ", full.Difference.Sections)} differ");
    }
}
