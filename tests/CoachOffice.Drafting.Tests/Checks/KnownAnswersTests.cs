using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Tests.Replay;

namespace CoachOffice.Drafting.Tests.Checks;

/// <summary>An edited book is checked with what was found of the book before it: nothing may come out otherwise than from the beginning.</summary>
public sealed class KnownAnswersTests
{
    private static readonly Lazy<KnownAnswers> Before = new(() =>
    {
        var answers = new KnownAnswers();
        RuleBaseCheck.AtOnce(HouseBook.Compiled, answers);
        return answers;
    });

    [Fact]
    public void The_same_book_asks_nothing_new()
    {
        var again = new KnownAnswers(Before.Value);
        Assert.Equal(RuleBaseCheck.AtOnce(HouseBook.Compiled).Select(Said), RuleBaseCheck.AtOnce(HouseBook.Compiled, again).Select(Said));
        Assert.Equal(0, again.WorkedOut);
        Assert.NotEqual(0, Before.Value.WorkedOut);
    }

    [Fact]
    public void An_edit_asks_only_what_it_can_have_changed()
    {
        var book = HouseBook.Book;
        var strict = book.Patterns.First(p => p.Needs.Count > 0);
        var other = book.With(drills: book.Drills.Select(d => d with { Cue = "breathe out" }), patterns: book.Patterns.Instead(strict, strict with { Needs = [] }));
        var answers = new KnownAnswers(Before.Value);
        RuleBaseCheck.AtOnce(other.Compiled(), answers);
        Assert.InRange(answers.WorkedOut, 1, Before.Value.WorkedOut / 10);
    }

    [Fact]
    public void Whatever_is_edited_a_question_in_the_same_words_has_the_same_answer()
    {
        var (same, other) = (0, 0);
        for (var seed = 0; seed < (FullProof.IsOn ? 120 : 25); seed++)
        {
            var chance = new Random(seed);
            var (name, book) = ("", HouseBook.Book);
            for (var i = 0; i < 8; i++) (name, book) = new RandomEdits(chance).Of(book) is var edit ? ($"{name} + {edit.Name}", edit.Book) : default;
            if (NamesWhatIsNotThere(book)) continue;
            var answers = new KnownAnswers();
            RuleBaseCheck.AtOnce(book.Compiled(), answers);
            foreach (var (question, answer) in answers.All)
            {
                if (!Before.Value.All.TryGetValue(question, out var before)) other++;
                else Assert.True(Said(before) == Said(answer), $"{seed} {name}: {question} was {Said(before)} and is {Said(answer)}");
                same++;
            }
        }

        Assert.True(same > 1000 && other > 100, $"{same} and {other} is too little to see anything");
    }

    [Fact]
    public void Whatever_is_edited_the_checks_find_what_they_find_from_the_beginning()
    {
        for (var seed = 0; seed < (FullProof.IsOn ? 120 : 8); seed++)
        {
            var (name, book) = new RandomEdits(new Random(seed)).Of(HouseBook.Book);
            if (NamesWhatIsNotThere(book)) continue;
            var edited = book.Compiled();
            var answers = new KnownAnswers(Before.Value);
            var (whole, quick) = (RuleBaseCheck.AtOnce(edited).Select(Said).ToList(), RuleBaseCheck.AtOnce(edited, answers).Select(Said).ToList());
            Assert.True(whole.SequenceEqual(quick, StringComparer.Ordinal), $"{seed} {name}: {string.Join("; ", whole.Except(quick))} against {string.Join("; ", quick.Except(whole))}");

            // And back again, with only what this book asked.
            Assert.Equal(RuleBaseCheck.AtOnce(HouseBook.Compiled).Select(Said), RuleBaseCheck.AtOnce(HouseBook.Compiled, new KnownAnswers(answers)).Select(Said));
        }
    }

    // The reader refuses such a book before it is checked.
    private static bool NamesWhatIsNotThere(Rulebook book) =>
        book.Patterns.Any(p => p.Over.Concat(p.Before).Concat(p.Unless.SelectMany(PatternDepths.Named)).Any(id => book.Find(id) is null) || book.Patterns.Count(o => o.Id == p.Id) > 1)
        || book.Progressions.SelectMany(p => p.Rungs).SelectMany(r => r.Drills).Any(id => book.Find(id) is null)
        || book.Progressions.SelectMany(p => p.Faults).Concat(book.Drills.SelectMany(d => d.Trains.Concat(d.Opposites))).Any(fault => book.Find(fault.Measure) is null)
        || book.Patterns.SelectMany(p => p.Root).Any(root => book.For(root) is null);

    private static string Said(object answer) => answer is HashSet<FaultId> faults ? string.Join(' ', faults.Order()) : $"{answer}";

    private static string Said(Anomaly anomaly) => $"{anomaly} {anomaly.ExampleJson}";
}
