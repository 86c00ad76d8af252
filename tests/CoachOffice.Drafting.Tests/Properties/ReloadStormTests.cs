using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Tests.Replay;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Properties;

/// <summary>Rulebooks are compiled and put in force while drafts are being made.</summary>
public sealed class ReloadStormTests
{
    private const int Reloads = 12;
    private const int Draftsmen = 3;

    /// <summary>Every so many drafts are looked at, and each first one by another book.</summary>
    private const int Kept = 10;

    [Fact]
    public async Task Each_draft_carries_one_rulebook_and_is_what_that_rulebook_drafts()
    {
        var lessons = new List<Domain.Plans.LessonFacts>();
        RandomLessons.One.Sample(lessons.Add, iter: 20, threads: 1);
        var books = new Dictionary<string, CompiledRulebook>(StringComparer.Ordinal) { [HouseBook.Compiled.Sha256] = HouseBook.Compiled };
        var inForce = HouseBook.Compiled;
        var done = false;
        var draftsmen = Enumerable.Range(0, Draftsmen).Select(_ => Task.Run(Drafts)).ToList();

        for (var i = 0; i < Reloads; i++)
        {
            var fresh = Edition(i);
            books[fresh.Sha256] = fresh;
            Volatile.Write(ref inForce, fresh);
        }

        Volatile.Write(ref done, true);
        var drafts = (await Task.WhenAll(draftsmen)).SelectMany(d => d).ToList();
        Assert.All(drafts, d => Assert.Equal(DraftJson.Text(Drafter.Draft(books[d.Draft.Rulebook.Sha256], d.Facts)), DraftJson.Text(d.Draft)));
        Assert.True(drafts.Select(d => d.Draft.Rulebook.Sha256).Distinct().Count() > 1, "no draft was made while the rulebook changed");

        List<(Domain.Plans.LessonFacts Facts, Draft Draft)> Drafts()
        {
            var made = new List<(Domain.Plans.LessonFacts Facts, Draft Draft)>();
            for (var i = 0; !Volatile.Read(ref done) || i < lessons.Count; i++)
            {
                var draft = Drafter.Draft(Volatile.Read(ref inForce), lessons[i % lessons.Count]);
                if (made.Count == 0 || made[^1].Draft.Rulebook != draft.Rulebook || i % Kept == 0) made.Add((lessons[i % lessons.Count], draft));
            }

            return made;
        }
    }

    /// <summary>The shipped book without one pattern and with every sentence marked, so that a draft made of two books at once would show it.</summary>
    private static CompiledRulebook Edition(int number)
    {
        var book = HouseBook.Book.With(patterns: HouseBook.Book.Patterns.Without(number).Select(p => p with { Because = $"{p.Because} ({number})" }));
        return CompiledRulebook.Compile(HouseBook.Compiled.Loaded with { Book = book, Sha256 = $"edition-{number}", Cases = [] });
    }
}
